using Spoolbook.Checks.Running;
using Spoolbook.Reading;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook;

/// <summary>
/// The whole way to the findings: a production folder in, what is wrong with it out. Each stage takes what the one
/// before it gave and knows nothing of the one after. Start reading here; <c>make</c> goes on to the papers.
/// </summary>
internal static class Pipeline
{
    /// <summary>Reads, checks the records, keeps the books, checks the books, and sets aside what was waived.</summary>
    public static Judged Judge(string path, Surroundings around) => Judge(new FolderFiles(Path.Combine(around.Folder, path)));

    /// <summary>The same for files that may lie anywhere.</summary>
    public static Judged Judge(IProductionFiles files)
    {
        var read = ProductionReader.Read(files);
        if (read.Production is not { } production)
        {
            return new Judged(read.Sources, null, read.Findings, []);
        }

        var onRecords = CheckRunner.OnRecords(production, read.Findings);
        var books = Books.Of(production, Tolerances.ShotsToGoOn.For(production));
        var onBook = CheckRunner.OnBook(books, [.. read.Findings, .. onRecords]);
        var (standing, waived) = Waivers.Apply([.. read.Findings, .. onRecords, .. onBook], production);
        return new Judged(read.Sources, books, standing, waived);
    }
}
