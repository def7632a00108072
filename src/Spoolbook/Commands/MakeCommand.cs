using System.CommandLine;

namespace Spoolbook.Commands;

/// <summary><c>spoolbook make</c>: checks, then writes every paper.</summary>
internal static class MakeCommand
{
    public static Command Build(CommandEnvironment around)
    {
        var production = CommonOptions.Production();
        var format = CommonOptions.Format();
        var outTo = Files.Out();
        var templates = Files.Templates(around);
        var draft = Files.Draft();
        var command = new Command("make", "Checks a production and makes all its papers.")
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
            var making = new Making(
                parsed.Given(production, around),
                parsed.GetValue(outTo),
                parsed.GetValue(templates),
                parsed.GetValue(draft),
                parsed.GetValue(format)
            );
            var result = making.Run(around);
            return result.Written is null || result.Found.HasErrors ? ExitStatus.ErrorsFound : ExitStatus.Well;
        });
        return command;
    }
}
