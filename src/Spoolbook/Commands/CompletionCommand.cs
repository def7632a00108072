using System.CommandLine;
using Spoolbook.Completing;

namespace Spoolbook.Commands;

/// <summary><c>spoolbook completion</c>: the script by which a shell completes the command.</summary>
internal static class CompletionCommand
{
    public static Command Build(CommandEnvironment around)
    {
        var shell = new OfferingArgument<string>("shell", (_, _) => ShellScripts.Shells.Select(s => new Offer(s)))
        {
            Description = $"Which shell's: {string.Join(", ", ShellScripts.Shells)}.",
        };
        shell.Validators.Add(given =>
        {
            if (given.Tokens is [{ Value: var named }] && !ShellScripts.Shells.Contains(named))
            {
                given.AddError(Choice.Objection(named, ShellScripts.Shells));
            }
        });
        var command = new Command(
            "completion",
            "Prints the script that completes commands, options, rolls, lenses and checks at a press of the tabulator."
        )
        {
            shell,
        };
        command.SetAction(parsed =>
        {
            around.Out.Write(ShellScripts.Of(parsed.GetRequiredValue(shell)));
            return ExitStatus.Well;
        });
        return command;
    }
}
