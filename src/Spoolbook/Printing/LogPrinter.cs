using System.Collections.Immutable;
using Spoolbook.Entry;
using Spoolbook.Importing;
using Spoolbook.Logging;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Texts;

namespace Spoolbook.Printing;

/// <summary>Prints what came of lines, for people.</summary>
/// <param name="areMany">Whether there are several lines, so that each answer says to which.</param>
internal sealed class LogPrinter(CommandEnvironment around, bool areMany)
{
    readonly Ink _ink = new(around.Colour);

    /// <summary>One line of answer and the findings that it brings; or why it is refused.</summary>
    public void Print(LineAnswer answer)
    {
        var place = areMany ? Plain.Escaped($"{answer.Text.File}:{answer.Text.Line}: ") : "";
        if (answer.Unread is { } unread)
        {
            var lines = new FindingText(_ink, around, (_, _) => answer.Text.Text).Lines(unread);
            lines.SkipLast(1).ToList().ForEach(around.Out.WriteLine);
        }
        else if (answer.Objection is { } objection)
        {
            Print(Level.Error, place, objection.Message, "");
            Help(objection.Help);
        }
        else if (answer.IsAgainstTheRecord)
        {
            foreach (var finding in answer.Worse.Where(f => f.Level == Level.Error))
            {
                Print(finding.Level, place, finding.Message, finding.Check);
                Help(finding.Help);
            }
        }
        else
        {
            var shown = areMany ? $"{answer.Text.Line,3}  " : "";
            foreach (
                var line in WrappedText.Lines(
                    RollWords.Of(answer).Select((w, i) => i == 0 ? shown + w : w),
                    " · ",
                    around.Width,
                    2 + shown.Length
                )
            )
            {
                around.Out.WriteLine(line);
            }

            foreach (var finding in answer.Worse)
            {
                Print(finding.Level, new string(' ', 2 + shown.Length), finding.Message, finding.Check);
            }
        }
    }

    /// <summary>What was written, or would have been.</summary>
    public void PrintEnd(ImmutableArray<LineAnswer> answers, ImmutableArray<ChangedFile> files, bool dryRun)
    {
        if (answers.Any(a => !a.IsWell))
        {
            var anyway = answers.All(a => a.IsWell || a.IsAgainstTheRecord) ? ", or write it nevertheless: --anyway" : "";
            around.Error.WriteLine(
                areMany
                    ? $"Nothing was written: correct the lines, and log them again{anyway}."
                    : $"Nothing was written: correct the line{anyway}."
            );
            return;
        }

        if (dryRun)
        {
            PrintDifference(files);
            around.Out.WriteLine($"{_ink.Bold("Nothing was written")} (--dry-run).");
        }
    }

    /// <summary>For people and for patch programs.</summary>
    void PrintDifference(ImmutableArray<ChangedFile> files)
    {
        foreach (var line in files.SelectMany(UnifiedDiff.Write))
        {
            around.Out.WriteLine(TextCharacters.AreAllowed(line) ? line : Plain.Text(line));
        }
    }

    void Print(Level level, string before, string message, string check)
    {
        var word = level.ToString().ToLowerInvariant();
        var name = check.Length == 0 ? "" : $" [{check}]";
        var lines = WrappedText
            .Words($"{before}{word}: ", Plain.Escaped(message) + name, around.Width, before.TakeWhile(c => c == ' ').Count() + 2)
            .ToList();
        var inked = level switch
        {
            Level.Error => _ink.Red(word),
            Level.Warning => _ink.Yellow(word),
            _ => _ink.Blue(word),
        };
        around.Out.WriteLine(
            lines[0].StartsWith(before + word, StringComparison.Ordinal) ? before + inked + lines[0][(before + word).Length..] : lines[0]
        );
        lines.Skip(1).ToList().ForEach(around.Out.WriteLine);
    }

    void Help(string help)
    {
        foreach (var line in help.Length == 0 ? [] : WrappedText.Words("   help: ", Plain.Escaped(help), around.Width, 9))
        {
            around.Out.WriteLine(line.Replace("   help:", "   " + _ink.Green("help:"), StringComparison.Ordinal));
        }
    }
}
