using Spoolbook.Checks.Ruling;
using Spoolbook.Papers;
using Spoolbook.Papers.Pages;

namespace Spoolbook.Writing;

/// <summary>The stages after the checks: prints the papers, and writes them into their folder.</summary>
/// <param name="work">Where they go.</param>
/// <param name="made">The date of making on them.</param>
/// <param name="draft">Whether they are printed in spite of errors.</param>
internal sealed class PaperStages(ITemplateSource templates, WorkFolder work, DateTimeOffset made, bool draft, CommandEnvironment around)
    : IPaperStages
{
    public bool Draft => draft;

    public PrintingStage Print(CheckedProduction found)
    {
        var options = new PrintOptions(made, templates)
        {
            Rules = HouseLevels.Changes(found.Books!.Production),
            NotLookedAt = found.NotLookedAt,
        };
        PrintedPapers printed;
        try
        {
            printed = (PrintedPapers)around.Once("papers", () => PaperPrinter.Print(found.Books, found.Findings, found.Waived, options));
        }
        catch (PaperException broken)
        {
            around.Progress.File = broken.Paper;
            throw;
        }

        return new PrintingStage(printed.Faults, () => new PaperFolder(work).Put(printed.Files));
    }
}
