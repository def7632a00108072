using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Papers.Pictures;

/// <summary>The legend of the patterns of some rolls, in as many lines as the width needs.</summary>
sealed class Legend
{
    const double LineHeight = 11;
    const double Swatch = 16;

    static readonly (Pattern Pattern, string Word)[] _words =
    [
        (Pattern.Good, "good"),
        (Pattern.Hold, "hold"),
        (Pattern.NoGood, "no-good"),
        (Pattern.Waste, "waste"),
        (Pattern.Fog, "picture-fog"),
        (Pattern.ShortEnd, "short-end"),
        (Pattern.Twice, "picture-twice"),
        (Pattern.Fade, "picture-fade"),
    ];

    readonly ImmutableArray<(Pattern? Pattern, string Text)> _entries;

    Legend(IEnumerable<(Pattern? Pattern, string Text)> entries) => _entries = [.. entries];

    /// <summary>The legend of several rolls' patterns, with the letters of the causes of waste.</summary>
    public static Legend OfAll(IEnumerable<RollBook> rolls, PaperFormat format) =>
        new([.. Patterned([.. rolls], format, _ => ""), (null, format.Words["picture-numbers"])]);

    /// <summary>The legend of one roll's patterns, with how much film there is of each: nobody measures a picture.</summary>
    /// <param name="account">The roll's account in centimetres, as a metric paper prints it.</param>
    public static Legend OfRoll(RollBook roll, MetricTally account, PaperFormat format)
    {
        var (tally, fog, fogged) = (roll.Tally, roll.Tally.WastedBy(WasteCause.Fog), account.Wasted.GetValueOrDefault(WasteCause.Fog));
        return new(Patterned([roll], format, pattern => pattern switch
                {
                    Pattern.Good => Amount(tally.Good, account.Good),
                    Pattern.Hold => Amount(tally.Hold, account.Hold),
                    Pattern.NoGood => Amount(tally.NoGood, account.NoGood),
                    Pattern.ShortEnd => Amount(tally.ShortEnd, account.ShortEnd),
                    Pattern.Fog => Amount(fog, fogged),
                    Pattern.Fade => "",
                    Pattern.Twice => "\u00A0" + format.Length(Twice(roll.Strip.Segments)),
                    _ => Amount(tally.Waste - fog, account.Waste - fogged),
                }));

        // The words do not break here: a length belongs to its kind.
        string Amount(Footage film, long centimetres) => "\u00A0" + format.Account(film, centimetres);
    }

    /// <summary>How often a stretch was exposed, where there is no room for words: <c>2×</c>.</summary>
    public static string Times(Segment segment) => PaperFormat.Number(segment.Layers.Length) + "×";

    static Footage Twice(IEnumerable<Segment> segments) =>
        segments.Where(s => s.Layers.Length > 1).Aggregate(Footage.Zero, (sum, s) => sum + s.Span.Length);

    static IEnumerable<(Pattern? Pattern, string Text)> Patterned(
        ImmutableArray<RollBook> rolls,
        PaperFormat format,
        Func<Pattern, string> amount
    )
    {
        ImmutableArray<Segment> segments = [.. rolls.SelectMany(r => r.Strip.Segments)];
        var used = segments.Select(Patterns.Of).ToHashSet();
        if (Twice(segments) > Footage.Zero)
        {
            used.Add(Pattern.Twice);
        }

        if (rolls.SelectMany(r => r.Strip.Layers).Any(l => l.Opening.Overlaps(l.Span) || l.Closing.Overlaps(l.Span)))
        {
            used.Add(Pattern.Fade);
        }

        string WordOf(Pattern pattern, string key) =>
            pattern == Pattern.Twice
                ? format.Words.Fill(
                    key,
                    (
                        "times",
                        string.Join(", ", segments.Where(s => s.Layers.Length > 1).Select(Times).Distinct().Order(StringComparer.Ordinal))
                    )
                )
            : pattern == Pattern.ShortEnd ? string.Join(" / ", WordsOfRests(rolls).Select(w => format.Words[w]))
            : format.Words[pattern == Pattern.Waste && used.Contains(Pattern.Fog) ? "picture-other-waste" : key];

        var causes = segments
            .Where(s => Patterns.Of(s) == Pattern.Waste)
            .Select(s => s.Cause!.Value)
            .Distinct()
            .Order()
            .Select(c => format.CauseLetter(c) + " " + format.Cause(c));
        return from entry in _words
               where used.Contains(entry.Pattern)
               let word = WordOf(entry.Pattern, entry.Word) + amount(entry.Pattern)
               select ((Pattern?)entry.Pattern, entry.Pattern == Pattern.Waste ? $"{word}: {string.Join(", ", causes)}" : word);
    }

    /// <summary>The word for the film left on a roll. While the roll is in a camera, that is no short end: it may yet be shot.</summary>
    public static string WordOfRest(RollBook roll) => roll.Roll.Unload is null ? "not-shot-yet" : "short-end";

    static IEnumerable<string> WordsOfRests(IEnumerable<RollBook> rolls) =>
        from roll in rolls
        where roll.Strip.Segments.Any(s => Patterns.Of(s) == Pattern.ShortEnd)
        group roll by WordOfRest(roll) into same
        orderby same.Key descending
        select same.Key;

    /// <summary>What it says.</summary>
    public string Text => string.Join(", ", _entries.Select(e => e.Text));

    /// <summary>Draws it, and returns its height.</summary>
    public double Draw(SvgWriter svg, double width, double top)
    {
        var (x, y) = (0.0, top);
        foreach (var (pattern, text) in _entries)
        {
            var swatch = pattern is null ? 0 : Swatch + 4;
            var needs = swatch - 1 + SvgWriter.WidthOf(text) + 12;
            if (x > 0 && x + needs > width)
            {
                (x, y) = (0, y + LineHeight);
            }

            if (pattern is { } drawn)
            {
                Patterns.Draw(svg, new Box(x + 0.5, y + 0.5, Swatch, 8), drawn);
            }

            svg.Text(x + swatch, y + 7.2, text);
            x += needs;
        }

        return y + LineHeight - top;
    }
}
