using System.CommandLine;
using Spoolbook.Asking;

namespace Spoolbook.Commands;

/// <summary><c>spoolbook load</c>: a roll goes into a camera.</summary>
internal static class LoadCommand
{
    public static Command Build(CommandEnvironment around)
    {
        var options = new LogOptions(around);
        var command = options.Command(
            "load",
            "Logs a load: begins the roll's file.",
            "The load: R04 N250-A/3 in B1 by ines 9:15 head 4. Without any, it asks."
        );
        command.SetAction(parsed =>
        {
            var (run, words) = (new LogRun(options.Settings(parsed), around), parsed.GetValue(options.Words) ?? []);
            if (words is not [])
            {
                return run.Take("load " + string.Join(' ', words));
            }

            var session = run.Session();
            if (session.Found.Books is not { } books)
            {
                return run.Unreadable(session);
            }

            var asker = new Asker(LogOptions.Lines(around), around.Out, () => session.Context);
            var (line, isZeroed) = LoadQuestions.Ask(asker, books, around.Now());
            around.Out.WriteLine(line);
            var status = run.Take(line);
            if (status == ExitStatus.Well && !isZeroed)
            {
                around.Out.WriteLine("Zero the frame counter and the dial before the first take.");
            }

            return status;
        });
        return command;
    }
}
