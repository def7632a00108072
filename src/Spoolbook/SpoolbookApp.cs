using Spoolbook.Commands;

namespace Spoolbook;

/// <summary>The command <c>spoolbook</c>, whole.</summary>
public static class SpoolbookApp
{
    /// <summary>Runs one command line; returns its exit status.</summary>
    public static int Run(string[] args, CommandEnvironment around) =>
        CommandLine.Run(
            args,
            around,
            [
                MakeCommand.Build(around),
                CheckCommand.Build(around),
                ImportCommand.Build(around),
                ExplainCommand.Build(around),
                SchemaCommand.Build(around),
                ReckonCommand.Build(around),
            ]
        );
}
