using System.CommandLine;
using Spoolbook.Printing;
using Spoolbook.Writing;

namespace Spoolbook.Commands;

/// <summary><c>spoolbook check</c>: findings, and no paper.</summary>
internal static class CheckCommand
{
    public static Command Build(CommandEnvironment around)
    {
        var folder = CommonOptions.Folder(around);
        var format = CommonOptions.Format();
        var command = new Command("check", "Says what is wrong in a production, and writes nothing.") { folder, format };
        command.SetAction(parsed =>
        {
            var from = parsed.GetRequiredValue(folder);
            WorkFolder.SettleProduction(from, "check", around);
            var found = Pipeline.Run(from, around).Found;
            FindingPrinter.Print(found, from, parsed.GetValue(format), around);
            return found.HasErrors ? ExitStatus.ErrorsFound : ExitStatus.Well;
        });
        return command;
    }
}
