using System.CommandLine;
using Spoolbook.Printing;
using Spoolbook.Writing;

namespace Spoolbook.Commands;

/// <summary><c>spoolbook check</c>: findings only, no papers.</summary>
internal static class CheckCommand
{
    public static Command Build(CommandEnvironment around)
    {
        var production = CommonOptions.Production();
        var format = CommonOptions.Format();
        var command = new Command("check", "Checks a production. Writes nothing.") { production, format };
        var say = new SayOptions();
        say.AddTo(command);
        command.Want(production, around);
        command.SetAction(parsed =>
        {
            var from = parsed.Given(production, around);
            WorkFolder.SettleProduction(from, "check", around);
            var findings = new FindingPrinter(from, parsed.GetValue(format), around) { Loudness = say.Loudness(parsed) };
            var found = Pipeline.Run(from, around).Found;
            findings.Print(found);
            return found.Fails(say.IsStrict(parsed)) ? ExitStatus.ErrorsFound : ExitStatus.Well;
        });
        return command;
    }
}
