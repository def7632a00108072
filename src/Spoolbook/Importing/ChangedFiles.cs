using System.Collections.Immutable;
using Spoolbook.Entry;
using Spoolbook.Reading.Files;

namespace Spoolbook.Importing;

/// <summary>A production with some files changed in memory, so that the checks see what will be written.</summary>
internal sealed class ChangedFiles(IProductionFiles files, ImmutableArray<ChangedFile> changed) : IProductionFiles
{
    public bool IsOneFile => files.IsOneFile;

    public ImmutableArray<string> Names { get; } =
    [
        .. files.Names.Where(name => !changed.Any(c => c.Name == name && c.After is null)),
        .. changed.Where(c => c.After is not null).Select(c => c.Name).Except(files.Names).Order(StringComparer.Ordinal),
    ];

    public ImmutableArray<PassedFile> PassedOver => files.PassedOver;

    public byte[]? Ledger => files.Ledger;

    public SchoolPlace? School => files.School;

    public FileText Open(string name) =>
        changed.FirstOrDefault(c => c.Name == name)?.After is { } text ? FileText.Of(text) : files.Open(name);

    public PictureFile OpenPicture(string path) => files.OpenPicture(path);

    public PictureFile OpenSchoolPicture(string path) => files.OpenSchoolPicture(path);
}
