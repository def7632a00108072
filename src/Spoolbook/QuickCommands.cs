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
    public static int Run(string[] args, CommandEnvironment around, Func<string[], int> whole) =>
        CommandLine.AskedInWords(args) is [var named, ..] && Builders.TryGetValue(named, out var build)
            ? CommandLine.Run(args, around, [build(around)])
            : whole(args);
}
