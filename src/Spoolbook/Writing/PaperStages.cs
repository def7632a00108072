using Spoolbook.Checks.Ruling;
using Spoolbook.Papers;
using Spoolbook.Papers.Pages;

namespace Spoolbook.Writing;

/// <summary>The stages after the checks: the press prints, and the papers go into their folder.</summary>
/// <param name="folder">Where they go.</param>
/// <param name="made">The date of making that they carry.</param>
/// <param name="draft">Whether they are printed although there are errors.</param>
/// <param name="progress">Where the paper is noted that printing broke on.</param>
internal sealed class PaperStages(ITemplateSource templates, string folder, DateTimeOffset made, bool draft, Progress progress)
    : IPaperStages
{
    public bool Draft => draft;

    public PrintingStage Print(CheckedProduction found)
    {
        var options = new PrintOptions(made, templates) { Rules = HouseLevels.Changes(found.Books!.Production) };
        PrintedPapers printed;
        try
        {
            printed = PaperPrinter.Print(found.Books, found.Findings, found.Waived, options);
        }
        catch (PaperException broken)
        {
            progress.File = broken.Paper;
            throw;
        }

        return new PrintingStage(printed.Faults, () => new WrittenPapers(folder, PaperFolder.Put(folder, printed.Files)));
    }
}
