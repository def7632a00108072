using System.CommandLine;
using Spoolbook.Printing;
using Spoolbook.Schools;
using Spoolbook.Writing;

namespace Spoolbook.Commands;

/// <summary><c>spoolbook check</c>: findings only, no papers.</summary>
internal static class CheckCommand
{
    public static Command Build(CommandEnvironment around)
    {
        var productions = CommonOptions.Productions();
        var format = CommonOptions.Format();
        var command = new Command("check", "Checks a production, or several. Writes nothing.") { productions, format };
        var say = new SayOptions();
        say.AddTo(command);
        command.Want(productions, around);
        command.SetAction(parsed =>
        {
            var chosen = ChosenProductions.Of(parsed.GetValue(productions) ?? [], around);
            if (chosen.IsSeveral)
            {
                chosen.Settle("check", around);
                var form = CommonOptions.Several(parsed.GetValue(format), makesPapers: false, say.Loudness(parsed));
                return new SeveralProductions("checking", chosen.Names, form, around, Check)
                {
                    Term = chosen.School is { } school ? new SchoolTerm(school, around) : null,
                    IsStrict = say.IsStrict(parsed),
                }
                    .Run()
                    .Status;
            }

            var from = chosen.Names[0];
            WorkFolder.SettleProduction(from, "check", around);
            var findings = new FindingPrinter(from, parsed.GetValue(format), around) { Loudness = say.Loudness(parsed) };
            var found = Pipeline.Run(from, around).Found;
            findings.Print(found);
            return found.Fails(say.IsStrict(parsed)) ? ExitStatus.ErrorsFound : ExitStatus.Well;
        });
        return command;
    }

    static PipelineResult Check(string production, CommandEnvironment around)
    {
        WorkFolder.SettleProduction(production, "check", around);
        return Pipeline.Run(production, around);
    }
}
