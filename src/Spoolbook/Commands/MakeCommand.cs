using System.CommandLine;
using Spoolbook.Checks.Running;
using Spoolbook.Papers;
using Spoolbook.Papers.Pages;
using Spoolbook.Printing;
using Spoolbook.Writing;

namespace Spoolbook.Commands;

/// <summary><c>spoolbook make</c>: checks, and writes every paper.</summary>
internal static class MakeCommand
{
    public static Command Build(Surroundings around)
    {
        var folder = CommonOptions.Folder(around);
        var format = CommonOptions.Format();
        var outTo = new Option<string?>("--out") { Description = "Where the papers go; the folder 'papers' in the production's unless given." };
        var templates = Files.Templates(around);
        var draft = new Option<bool>("--draft") { Description = "Print even where there are errors; every page then says DRAFT and lists them." };
        var command = new Command("make", "Checks a production and writes every paper of it.") { folder, outTo, templates, draft, format };
        command.SetAction(parsed =>
        {
            var from = parsed.GetRequiredValue(folder);
            var judged = Pipeline.Judge(from, around);
            if (judged.HasErrors && (!parsed.GetValue(draft) || judged.Book is null))
            {
                FindingPrinter.Print(judged, from, parsed.GetValue(format), around);
                around.Error.WriteLine("No paper was written: mend the errors, or print with --draft.");
                return ExitStatus.ErrorsFound;
            }

            var pressed = Print(judged, Files.Templates(parsed.GetValue(templates), around), around);
            var all = judged.With(pressed.Faults);
            if (pressed.Failed)
            {
                FindingPrinter.Print(all, from, parsed.GetValue(format), around);
                around.Error.WriteLine("No paper was written: a template or the logo could not be printed.");
                return ExitStatus.ErrorsFound;
            }

            var shelf = parsed.GetValue(outTo) is { } to ? Path.Combine(around.Folder, to) : Files.Shelf(from, around);
            var shelved = Shelf.Put(shelf, pressed.Files);
            FindingPrinter.Print(all, from, parsed.GetValue(format), around);
            if (parsed.GetValue(format) == FindingFormat.Text)
            {
                ShelfPrinter.Print(shelved, "papers", shelf, around);
            }

            return judged.HasErrors ? ExitStatus.ErrorsFound : ExitStatus.Well;
        });
        return command;
    }

    // Every paper, in memory.
    static Pressed Print(Judged judged, ITemplateSource templates, Surroundings around) =>
        PaperPrinter.Print(judged.Book!, judged.Findings, judged.Waived, new PrintOptions(around.Made, templates) { Rules = HouseLevels.Changes(judged.Book!.Production) });
}
