using System.CommandLine;
using Spoolbook.Commands;

namespace Spoolbook;

/// <summary>The whole command <c>spoolbook</c>.</summary>
public static class SpoolbookApp
{
    /// <summary>Runs one command line; returns its exit status.</summary>
    public static int Run(string[] args, CommandEnvironment environment)
    {
        var around = ColourOption.In(args, environment);
        return CommandLine.Run(args, around, Commands(around));
    }

    /// <summary>All commands, in the order of the help.</summary>
    internal static IReadOnlyList<Command> Commands(CommandEnvironment around) =>
        [
            NewCommand.Build(around),
            MakeCommand.Build(around),
            WatchCommand.Build(around),
            CheckCommand.Build(around),
            StatusCommand.Build(around),
            LogCommand.Build(around),
            LoadCommand.Build(around),
            UnloadCommand.Build(around),
            ImportCommand.Build(around),
            ExplainCommand.Build(around),
            SchemaCommand.Build(around),
            ReckonCommand.Build(around),
            CompletionCommand.Build(around),
            CompleteCommand.Build(around, () => CommandLine.Root(Commands(around), around)),
        ];
}
