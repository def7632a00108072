using System.CommandLine;
using Spoolbook.Schools;

namespace Spoolbook.Commands;

/// <summary><c>spoolbook make</c>: checks, then writes every paper.</summary>
internal static class MakeCommand
{
    public static Command Build(CommandEnvironment around)
    {
        var productions = CommonOptions.Productions();
        var format = CommonOptions.Format();
        var outTo = Files.Out();
        var templates = Files.Templates(around);
        var draft = Files.Draft();
        var command = new Command("make", "Checks a production, or several, and makes all papers.")
        {
            productions,
            outTo,
            templates,
            draft,
            format,
        };
        command.Want(productions, around);
        command.Validators.Add(given =>
        {
            if (given.GetValue(outTo) is not null && (given.GetValue(productions)?.Length ?? 0) > 1)
            {
                given.AddError(
                    "--out is one folder, and several productions are named. Leave it out: each has its papers in its own folder."
                );
            }
        });
        command.SetAction(parsed =>
        {
            var chosen = ChosenProductions.Of(parsed.GetValue(productions) ?? [], around);
            var making = new Making(
                chosen.Names.FirstOrDefault() ?? "",
                parsed.GetValue(outTo),
                parsed.GetValue(templates),
                parsed.GetValue(draft),
                parsed.GetValue(format)
            );
            if (!chosen.IsSeveral)
            {
                var result = making.Run(around);
                return result.Written is null || result.Found.HasErrors ? ExitStatus.ErrorsFound : ExitStatus.Well;
            }

            if (making.To is not null)
            {
                return WrongUse.Print(
                    "--out is one folder, and this is a folder of productions. Leave it out: each has its papers in its own folder.",
                    around
                );
            }

            return new SeveralProductions(
                "making",
                chosen.Names,
                CommonOptions.Several(making.Format, makesPapers: true),
                around,
                (name, own) => (making with { Production = name }).Make(own)
            )
            {
                Term = chosen.School is { } school
                    ? new SchoolTerm(school, around) { Papers = new SchoolPapers(making.Templates, around).Make }
                    : null,
            }
                .Run()
                .Status;
        });
        return command;
    }
}
