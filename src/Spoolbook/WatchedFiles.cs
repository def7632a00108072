using System.Collections.Immutable;
using Spoolbook.Reading.Files;

namespace Spoolbook;

/// <summary>A production's files, noting which was opened last: a fault in reading is about that one.</summary>
internal sealed class WatchedFiles(IProductionFiles files, Progress progress) : IProductionFiles
{
    public bool IsOneFile => files.IsOneFile;

    public ImmutableArray<string> Names => files.Names;

    public ImmutableArray<PassedFile> PassedOver => files.PassedOver;

    public byte[]? Ledger => files.Ledger;

    public SchoolPlace? School => files.School;

    public FileText Open(string name)
    {
        progress.File = name;
        return files.Open(name);
    }

    public PictureFile OpenPicture(string path) => files.OpenPicture(path);

    public PictureFile OpenSchoolPicture(string path) => files.OpenSchoolPicture(path);
}
