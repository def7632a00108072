using System.CommandLine;
using Spoolbook.Commands;

namespace Spoolbook;

/// <summary>
/// The commands that need no paper, which the native program runs itself. It passes every other command line to the
/// whole program.
/// </summary>
public static class QuickCommands
{
    static readonly Dictionary<string, Func<CommandEnvironment, Command>> Builders = new(StringComparer.Ordinal)
    {
        ["check"] = CheckCommand.Build,
        ["status"] = StatusCommand.Build,
        ["log"] = LogCommand.Build,
        ["load"] = LoadCommand.Build,
        ["unload"] = UnloadCommand.Build,
        ["receive"] = ReceiveCommand.Build,
        ["explain"] = ExplainCommand.Build,
        ["reckon"] = ReckonCommand.Build,
    };

    /// <summary>Runs one command line, or passes it unchanged to the whole program; returns its exit status.</summary>
    /// <param name="whole">Starts the whole program with a command line and returns its exit status.</param>
    public static int Run(string[] args, CommandEnvironment environment, Func<string[], int> whole)
    {
        // What the words after `--` begin with says whether it can be completed here.
        if (args is [CompleteCommand.Name, "--", var verb, _, ..] && Builders.TryGetValue(verb, out var known))
        {
            return CommandLine.Run(args, environment, [CompleteCommand.Build(environment, Only)]);

            Command Only() => CommandLine.Root([known(environment)], environment);
        }

        if (CommandLine.AskedInWords(args) is not [var named, ..] || !Builders.TryGetValue(named, out var build))
        {
            return whole(args);
        }

        var around = ColourOption.In(args, environment);
        return CommandLine.Run(args, around, [build(around)]);
    }
}
