using Spoolbook.Checks.Running;
using Spoolbook.Papers;
using Spoolbook.Reading;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook;

/// <summary>
/// The whole way: a production folder in, findings and papers out. Each stage takes what the one before it
/// gave and knows nothing of the one after. Start reading here.
/// </summary>
internal static class Pipeline
{
    /// <summary>Reads, checks the records, keeps the book, checks the book, and sets aside what was waived.</summary>
    public static Judged Judge(string path, Surroundings around) => Judge(Files.Open(path, around));

    /// <summary>The same for files that may lie anywhere.</summary>
    public static Judged Judge(IProductionFiles files)
    {
        var read = ProductionReader.Read(files);
        if (read.Production is not { } production)
        {
            return new Judged(read.Sources, null, read.Findings, []);
        }

        var onRecords = CheckRunner.OnRecords(production, read.Findings);
        var book = BookKeeper.Keep(production);
        var onBook = CheckRunner.OnBook(book, [.. read.Findings, .. onRecords]);
        var (standing, waived) = Waivers.Apply([.. read.Findings, .. onRecords, .. onBook], production);
        return new Judged(read.Sources, book, standing, waived);
    }

    /// <summary>Prints every paper in memory.</summary>
    public static Pressed Print(Judged judged, string? ownTemplates, Surroundings around) =>
        PaperPress.Print(judged.Book!, judged.Findings, judged.Waived, new PressOptions(around.Made, Files.Templates(ownTemplates)) { Rules = HouseLevels.Changes(judged.Book!.Production) });
}
