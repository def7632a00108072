using System.CommandLine;
using Spoolbook.Printing;
using Spoolbook.Writing;

namespace Spoolbook.Commands;

/// <summary><c>spoolbook make</c>: checks, then writes every paper.</summary>
internal static class MakeCommand
{
    public static Command Build(CommandEnvironment around)
    {
        var production = CommonOptions.Production();
        var format = CommonOptions.Format();
        var outTo = new Option<string?>("--out")
        {
            Description = "Where the papers go; the folder 'papers' in the production's unless given.",
        };
        var templates = Files.Templates(around);
        var draft = new Option<bool>("--draft")
        {
            Description = "Print even where there are errors; every page then says DRAFT and lists them.",
        };
        var command = new Command("make", "Checks a production and writes every paper of it.")
        {
            production,
            outTo,
            templates,
            draft,
            format,
        };
        command.Want(production, around);
        command.SetAction(parsed =>
        {
            var from = parsed.Given(production, around);
            WorkFolder.SettleProduction(from, "make", around);
            using var work = WorkFolder.Open(
                parsed.GetValue(outTo) is { } to ? Path.Combine(around.Folder, to) : Files.PaperFolder(from, around),
                "make",
                around
            );
            var papers = new PaperStages(
                Files.Templates(parsed.GetValue(templates), around),
                work,
                around.Made,
                parsed.GetValue(draft),
                around.Progress
            );
            var findings = new FindingPrinter(from, parsed.GetValue(format), around);
            var result = Pipeline.Run(from, around, papers);
            findings.Print(result.Found);
            if (result.Written is not { } written)
            {
                around.Error.WriteLine(
                    result.End == PipelineEnd.NotPrinted
                        ? "No paper was written: a template or the logo could not be printed."
                        : "No paper was written: mend the errors, or print with --draft."
                );
                return ExitStatus.ErrorsFound;
            }

            if (parsed.GetValue(format) == FindingFormat.Text)
            {
                PaperFolderPrinter.Print(written.Files, "papers", written.Folder, around);
            }

            foreach (var note in written.Notes)
            {
                around.Error.WriteLine(Plain.Text(note));
            }

            return result.Found.HasErrors ? ExitStatus.ErrorsFound : ExitStatus.Well;
        });
        return command;
    }
}
