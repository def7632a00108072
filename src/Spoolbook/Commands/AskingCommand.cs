using System.CommandLine;
using Spoolbook.Asking;
using Spoolbook.Shoot;

namespace Spoolbook.Commands;

/// <summary>The frame of <c>load</c> and <c>unload</c>: words are a line of the short form; without any, the assistant is asked.</summary>
internal static class AskingCommand
{
    /// <param name="ofWords">What the words are.</param>
    /// <param name="say">Takes the words; with whether the answer is JSON.</param>
    /// <param name="ask">Asks for what the line must say, and takes it.</param>
    public static Command Build(
        CommandEnvironment around,
        string name,
        string description,
        string ofWords,
        Func<LogRun, string, bool, int> say,
        Func<LogRun, Books, Asker, int> ask
    )
    {
        var options = new LogOptions(around);
        var command = options.Command(name, description, ofWords);
        command.SetAction(parsed =>
        {
            var settings = options.Settings(parsed);
            var run = new LogRun(settings, around);
            if (parsed.GetValue(options.Words) is { Length: > 0 } words)
            {
                return say(run, string.Join(' ', words), settings.IsJson);
            }

            var session = run.Session();
            return session.Found.Books is { } books
                ? ask(run, books, new Asker(LogOptions.Lines(around), around.Out, () => session.Context))
                : run.Unreadable(session);
        });
        return command;
    }
}
