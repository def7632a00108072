using System.CommandLine;
using Spoolbook.Asking;
using Spoolbook.Entry.Lines;
using Spoolbook.Printing;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Commands;

/// <summary><c>spoolbook unload</c>: a roll comes out of a camera.</summary>
internal static class UnloadCommand
{
    public static Command Build(CommandEnvironment around) =>
        AskingCommand.Build(
            around,
            "unload",
            "Logs an unload, and says what to write on the can.",
            "The unload: 16:45 tail 2, 38 left, and the boxes of the sheet: G 45 H 22 NG 21. "
                + "The roll first where several are in cameras: R04: 16:45. Without any, it asks.",
            (run, words, isJson) => Take(run, [Line(words)], isJson, around),
            (run, books, asker) => Ask(run, books, asker, around)
        );

    static string Line(string line)
    {
        var roll = line.IndexOf(": ", StringComparison.Ordinal);
        return roll > 0 && !line[..roll].Contains(' ', StringComparison.Ordinal)
            ? $"{line[..roll]}: unload {line[(roll + 2)..]}"
            : "unload " + line;
    }

    static int Ask(LogRun run, Books books, Asker asker, CommandEnvironment around)
    {
        var open = books.Shoot.Rolls.Where(r => r.Roll.Unload is null).ToList();
        if (open.Count == 0)
        {
            around.Error.WriteLine("spoolbook: no roll is in a camera.");
            return ExitStatus.ErrorsFound;
        }

        var names = open.Select(r => r.Roll.Name.Value).ToList();
        var name =
            open.Count == 1
                ? names[0]
                : asker.Ask("Which roll", names[^1], answer =>
                    names.Contains(answer) ? null : $"In cameras are {string.Join(", ", names)}."
                );
        var roll = RollInCamera.Of(open[names.IndexOf(name)], books.Production);
        var lines = UnloadQuestions.Ask(asker, roll, books, around.Now());
        lines.ToList().ForEach(around.Out.WriteLine);
        return Take(run, lines, false, around);
    }

    // All of them in one edit: a run-off without its unload would say that the roll is still in the camera.
    static int Take(LogRun run, IReadOnlyList<string> lines, bool isJson, CommandEnvironment around)
    {
        var status = run.Take([.. lines.Select((line, at) => new LineText(LogRun.Typed, at + 1, line))], string.Join("; ", lines));
        if (status != ExitStatus.Well)
        {
            return status;
        }

        if (!isJson && run.Last is { Roll.Book: var roll } && run.Books is { } books && roll.Roll.Unload is not null)
        {
            CanWords.Of(roll, books, around.Width).ToList().ForEach(around.Out.WriteLine);
        }

        return ExitStatus.Well;
    }
}
