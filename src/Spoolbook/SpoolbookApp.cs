using System.CommandLine;
using Spoolbook.Commands;

namespace Spoolbook;

/// <summary>The whole command <c>spoolbook</c>.</summary>
public static class SpoolbookApp
{
    // In the order of the help.
    static readonly (string Name, Func<CommandEnvironment, Command> Build)[] Builders =
    [
        ("new", NewCommand.Build),
        ("make", MakeCommand.Build),
        ("watch", WatchCommand.Build),
        ("check", CheckCommand.Build),
        ("status", StatusCommand.Build),
        ("log", LogCommand.Build),
        ("load", LoadCommand.Build),
        ("unload", UnloadCommand.Build),
        ("import", ImportCommand.Build),
        ("ship", ShipCommand.Build),
        ("receive", ReceiveCommand.Build),
        ("explain", ExplainCommand.Build),
        ("schema", SchemaCommand.Build),
        ("reckon", ReckonCommand.Build),
        ("completion", CompletionCommand.Build),
        (CompleteCommand.Name, around => CompleteCommand.Build(around, () => CommandLine.Root(Commands(around), around))),
    ];

    /// <summary>Runs one command line; returns its exit status. The command that it names is built alone, or else all of them.</summary>
    public static int Run(string[] args, CommandEnvironment environment)
    {
        var around = ColourOption.In(args, environment);
        var named = CommandLine.AskedInWords(args) is [var first, ..] ? Builders.Where(b => b.Name == first).ToArray() : [];
        return CommandLine.Run(args, around, named.Length > 0 ? [.. named.Select(b => b.Build(around))] : Commands(around));
    }

    /// <summary>All commands, in the order of the help.</summary>
    internal static IReadOnlyList<Command> Commands(CommandEnvironment around) => [.. Builders.Select(b => b.Build(around))];
}
