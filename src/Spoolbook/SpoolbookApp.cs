using Spoolbook.Commands;

namespace Spoolbook;

/// <summary>The whole command <c>spoolbook</c>.</summary>
public static class SpoolbookApp
{
    /// <summary>Runs one command line; returns its exit status.</summary>
    public static int Run(string[] args, CommandEnvironment around) =>
        CommandLine.Run(
            args,
            around,
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
                ShipCommand.Build(around),
                ReceiveCommand.Build(around),
                ExplainCommand.Build(around),
                SchemaCommand.Build(around),
                ReckonCommand.Build(around),
            ]
        );
}
