using System.CommandLine;
using Spoolbook.Printing;
using Spoolbook.Writing;

namespace Spoolbook.Commands;

/// <summary><c>spoolbook status</c>: where everything is, at a glance.</summary>
internal static class StatusCommand
{
    public static Command Build(CommandEnvironment around)
    {
        var production = CommonOptions.Production();
        var format = Choice.Of<StatusFormat>("--format", "How it is printed: text, or json for programs.");
        var command = new Command("status", "Shows where every foot is: rolls, cameras, stock left, shots to get, today.")
        {
            production,
            format,
        };
        command.Want(production, around);
        command.SetAction(parsed =>
        {
            var from = parsed.Given(production, around);
            WorkFolder.SettleProduction(from, "status", around);
            var found = Pipeline.Run(from, around).Found;
            if (found.Books is null)
            {
                new FindingPrinter(from, FindingFormat.Text, around).Print(found);
                return ExitStatus.ErrorsFound;
            }

            if (parsed.GetValue(format) == StatusFormat.Json)
            {
                around.Out.WriteLine(StatusJson.Write(found, Today(around)));
            }
            else
            {
                StatusPrinter.Print(found, Today(around), around);
            }

            return ExitStatus.Well;
        });
        return command;
    }

    static DateOnly Today(CommandEnvironment around) => DateOnly.FromDateTime(around.Made.DateTime);
}
