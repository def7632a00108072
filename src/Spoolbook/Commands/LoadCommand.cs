using System.CommandLine;
using Spoolbook.Asking;
using Spoolbook.Shoot;

namespace Spoolbook.Commands;

/// <summary><c>spoolbook load</c>: a roll goes into a camera.</summary>
internal static class LoadCommand
{
    public static Command Build(CommandEnvironment around) =>
        AskingCommand.Build(
            around,
            "load",
            "Logs a load: begins the roll's file.",
            "The load: R04 N250-A/3 in B1 by ines 9:15 head 4. Without any, it asks.",
            (run, words, _) => run.Take("load " + words),
            (run, books, asker) => Ask(run, books, asker, around)
        );

    static int Ask(LogRun run, Books books, Asker asker, CommandEnvironment around)
    {
        var (line, isZeroed) = LoadQuestions.Ask(asker, books, around.Now());
        around.Out.WriteLine(line);
        var status = run.Take(line);
        if (status == ExitStatus.Well && !isZeroed)
        {
            around.Out.WriteLine("Zero the frame counter and the dial before the first take.");
        }

        return status;
    }
}
