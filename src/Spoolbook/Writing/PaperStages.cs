using Spoolbook.Checks.Ruling;
using Spoolbook.Papers;
using Spoolbook.Papers.Pages;

namespace Spoolbook.Writing;

/// <summary>The stages after the checks: the press prints, and the papers go into their folder.</summary>
/// <param name="work">Where they go.</param>
/// <param name="made">The date of making that they carry.</param>
/// <param name="draft">Whether they are printed although there are errors.</param>
internal sealed class PaperStages(ITemplateSource templates, WorkFolder work, DateTimeOffset made, bool draft) : IPaperStages
{
    public bool Draft => draft;

    public PrintingStage Print(CheckedProduction found)
    {
        var options = new PrintOptions(made, templates) { Rules = HouseLevels.Changes(found.Books!.Production) };
        var printed = PaperPrinter.Print(found.Books, found.Findings, found.Waived, options);
        return new PrintingStage(printed.Faults, () => new PaperFolder(work).Put(printed.Files));
    }
}
