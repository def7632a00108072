using System.Collections.Immutable;
using Spoolbook.Checks;
using Spoolbook.Checks.Accepting;
using Spoolbook.Checks.Running;
using Spoolbook.Reading;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Findings;

namespace Spoolbook;

/// <summary>
/// The whole way: a production folder in, findings and papers out. Each stage takes what the one before it gave and
/// knows nothing of the one after. Start reading here: <c>make</c> goes all the way, <c>check</c> stops before
/// printing, and <c>import</c> is <c>check</c> over files that are not written yet.
/// </summary>
internal static class Pipeline
{
    /// <summary>Runs a production in a folder, or in one file.</summary>
    public static PipelineResult Run(string path, CommandEnvironment around, IPaperStages? papers = null) =>
        Run(new FolderFiles(Path.Combine(around.Folder, path)), around.Progress, papers);

    /// <summary>Reads, checks the records, keeps the book, checks the book, prints, applies levels and waivers, and writes.</summary>
    /// <param name="progress">Where it notes how far it came; null where nobody asks.</param>
    /// <param name="papers">Printing and writing; null to stop before them.</param>
    public static PipelineResult Run(IProductionFiles files, Progress? progress = null, IPaperStages? papers = null)
    {
        progress ??= new Progress();
        var stopped = papers is null ? PipelineEnd.Checked : PipelineEnd.Errors;
        progress.Begin("reading");
        var read = ProductionReader.Read(new WatchedFiles(files, progress));
        progress.Begin("checking");
        progress.Found = new CheckedProduction(read.Sources, null, read.Findings, []);
        if (read.Production is not { } production)
        {
            return new PipelineResult(new CheckedProduction(read.Sources, null, read.Findings, []), stopped);
        }

        var onRecords = CheckRunner.OnRecords(production, read.Findings);
        var books = Tolerances.BooksOf(production);
        var onBook = CheckRunner.OnBook(books, [.. read.Findings, .. onRecords]);
        var found = Settle(null);
        if (papers is null || (found.Fails(papers.Strict) && !papers.Draft))
        {
            return new PipelineResult(found, stopped);
        }

        progress.Begin("printing");
        progress.Found = found;
        var printed = papers.Print(found);
        var all = Settle(printed.Findings);
        if (printed.Failed)
        {
            return new PipelineResult(all, PipelineEnd.NotPrinted);
        }

        if (all.Fails(papers.Strict) && !papers.Draft)
        {
            return new PipelineResult(all, PipelineEnd.Errors);
        }

        // Printing found something that the production's own rules make an error: a draft lists it on each page.
        printed = all.Errors > found.Errors ? papers.Print(all) : printed;
        progress.Begin("writing papers");
        progress.Found = all;
        return new PipelineResult(all, PipelineEnd.Written) { Written = printed.WriteTo(papers.Folder) };

        // Papers list what was found before printing; the user gets the findings of all stages together.
        CheckedProduction Settle(ImmutableArray<Finding>? printing)
        {
            var (standing, waived) = Waivers.Apply([.. read.Findings, .. onRecords, .. onBook], production, printing);
            return new CheckedProduction(read.Sources, books, standing, waived);
        }
    }
}
