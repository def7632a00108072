using System.CommandLine;
using Spoolbook.Completing;

namespace Spoolbook.Commands;

/// <summary><c>spoolbook complete</c>, which a shell's script asks at each press of the tabulator. Nobody types it.</summary>
internal static class CompleteCommand
{
    public const string Name = "complete";

    /// <param name="root">The commands to complete.</param>
    public static Command Build(CommandEnvironment around, Func<Command> root)
    {
        var words = new Argument<string[]>("words") { Arity = ArgumentArity.ZeroOrMore };
        var command = new Command(Name, "Prints what a command line may go on with.") { words };
        command.Hidden = true;
        command.SetAction(parsed =>
        {
            foreach (var (word, about) in new Completer(root()).Of(parsed.GetValue(words) ?? []))
            {
                around.Out.WriteLine(about.Length > 0 ? $"{Printing.Plain.Escaped(word)}\t{about}" : Printing.Plain.Escaped(word));
            }

            return ExitStatus.Well;
        });
        return command;
    }
}
