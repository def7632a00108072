using System.Collections.Immutable;
using Spoolbook.Entry;
using Spoolbook.Reading.Files;

namespace Spoolbook.Importing;

/// <summary>A production with some files changed in memory, so that the checks see what will be written.</summary>
internal sealed class ChangedFiles(IProductionFiles files, ImmutableArray<ChangedFile> changed) : IProductionFiles
{
    public bool IsOneFile => files.IsOneFile;

    public ImmutableArray<string> Names => files.Names;

    public ImmutableArray<PassedFile> PassedOver => files.PassedOver;

    public string? Ledger => files.Ledger;

    public FileText Open(string name) =>
        changed.FirstOrDefault(c => c.Name == name) is { } file ? FileText.Of(file.After) : files.Open(name);

    public PictureFile OpenPicture(string path) => files.OpenPicture(path);
}
