using System.Globalization;
using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Asking;

/// <summary>Asks how a roll is taken out, and makes lines of the answers.</summary>
internal static class UnloadQuestions
{
    /// <summary>The lines: the unloading, and before it what ran that nobody logged.</summary>
    /// <param name="roll">The roll.</param>
    public static IReadOnlyList<string> Ask(Asker asker, RollInCamera roll, Books books, DateTime now)
    {
        var (production, context) = (books.Production, new Context(books.Production));
        var (name, lines) = (roll.Book.Roll.Name.Value, new List<string>());
        var start = books.Production.Rolls.Count(r => r.Unload is null) > 1 ? name + ": " : "";
        var before = production.Rolls.Where(r => r.Unload is not null).MaxBy(r => r.Unload!.On.Value)?.Unload;
        if (Missing(asker, roll, context) is { } ran)
        {
            lines.Add(start + ran);
        }

        var words = new List<string> { start + "unload" };
        Add("", asker.Ask("When", now.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture)));
        Add("by", asker.Ask("Who unloads", (before?.By ?? roll.Book.Roll.Load.By)?.Value ?? ""));
        Add("", asker.Ask("Light (dark, subdued, bright)", before?.Light?.Value.ToString().ToLowerInvariant() ?? "subdued"));
        Add(
            "tail",
            asker.Ask("Tail, lost in unloading", before?.Tail is { } tail ? LoadQuestions.Written(context.Write(tail.Value)) : "")
        );
        if (roll.Left.Frames > 0)
        {
            var about = lines.Count == 0 ? $" (some {context.Write(roll.Left)} less the tail)" : "";
            Add("", asker.Ask($"Short end{about}: kept or thrown", "kept", Fate));
            if (words[^1] != "thrown" && asker.Ask("Measured in its can (Enter if nobody did)") is { Length: > 0 } left)
            {
                words.Add($"{LoadQuestions.Written(left)} left");
            }
        }

        lines.Add(string.Join(' ', words));
        return lines;

        void Add(string key, string answer)
        {
            if (answer.Length > 0)
            {
                words.Add(key.Length == 0 ? answer : $"{key} {LoadQuestions.Quoted(answer)}");
            }
        }
    }

    static string? Fate(string answer) => answer is "kept" or "thrown" ? null : "Answer kept or thrown.";

    // What ran after the last entry, if the dial is farther than the log.
    static string? Missing(Asker asker, RollInCamera roll, Context context)
    {
        var logged = roll.At is { } at ? LoadQuestions.Written(context.Write(at)) : "";
        var dial = asker.Ask("The dial reads", logged, answer =>
            answer.Length == 0 || Read(answer, roll, context) is not null ? null : "Write feet as on the dial: 61, 61+24."
        );
        return
            roll.At is { } known
            && dial != logged
            && Read(dial, roll, context) is { } reads
            && known < reads
            && asker.Agree($"The log is at {logged} only. Was it run off from there, with the lens capped")
            ? $"run off {dial} capped"
            : null;
    }

    static Footage? Read(string length, RollInCamera roll, Context context)
    {
        var gauge = context.Production.Gauge;
        var unit = context.Production.Units == LengthUnit.Metres ? "m" : "ft";
        var text = length.All(c => char.IsAsciiDigit(c) || c == '.') ? length + unit : length;
        return FilmLength.Parse(text, gauge).TryGet(out var film) ? film.In(gauge, roll.Speed) : null;
    }
}
