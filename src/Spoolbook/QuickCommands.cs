using System.CommandLine;
using Spoolbook.Commands;

namespace Spoolbook;

/// <summary>
/// The commands that need no paper: what a program without the press can answer by itself. Every other
/// command line is for the whole program.
/// </summary>
public static class QuickCommands
{
    static readonly Dictionary<string, Func<CommandEnvironment, Command>> Builders = new(StringComparer.Ordinal)
    {
        ["check"] = CheckCommand.Build,
        ["explain"] = ExplainCommand.Build,
        ["reckon"] = ReckonCommand.Build,
    };

    /// <summary>Runs one command line, or gives it to the whole program as it stands; returns its exit status.</summary>
    /// <param name="whole">Starts the whole program with a command line and returns its exit status.</param>
    public static int Run(string[] args, CommandEnvironment around, Func<string[], int> whole) =>
        args is [var named, ..] && Builders.TryGetValue(named, out var build)
            ? CommandLine.Run(args, around, [build(around)])
            : whole(args);
}
