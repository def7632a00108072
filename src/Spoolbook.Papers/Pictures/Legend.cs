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
    ];

    readonly ImmutableArray<(Pattern? Pattern, string Text)> _entries;

    Legend(IEnumerable<(Pattern? Pattern, string Text)> entries) => _entries = [.. entries];

    /// <summary>The legend of several rolls' patterns, with the letters of the causes of waste.</summary>
    public static Legend OfAll(IEnumerable<RollBook> rolls, PaperFormat format) =>
        new([.. Patterned(rolls.SelectMany(r => r.Strip.Segments), format, _ => "", _ => ""), (null, format.Words["picture-numbers"])]);

    /// <summary>The legend of one roll's patterns, with how much film there is of each: nobody measures a picture.</summary>
    /// <param name="account">The roll's account in centimetres, as a metric paper prints it.</param>
    public static Legend OfRoll(RollBook roll, MetricTally account, PaperFormat format)
    {
        return new(Patterned(roll.Strip.Segments, format, OfPattern, OfCause));

        string OfPattern(Pattern pattern) =>
            pattern switch
            {
                Pattern.Good => Amount(roll.Tally.Good, account.Good),
                Pattern.Hold => Amount(roll.Tally.Hold, account.Hold),
                Pattern.NoGood => Amount(roll.Tally.NoGood, account.NoGood),
                Pattern.ShortEnd => Amount(roll.Tally.ShortEnd, account.ShortEnd),
                Pattern.Fog => OfCause(WasteCause.Fog),
                _ => "",
            };

        string OfCause(WasteCause cause) => Amount(roll.Tally.WastedBy(cause), account.Wasted.GetValueOrDefault(cause));

        // The words do not break here: a length belongs to its kind.
        string Amount(Footage film, long centimetres) => "\u00A0" + format.Account(film, centimetres);
    }

    static IEnumerable<(Pattern? Pattern, string Text)> Patterned(
        IEnumerable<Segment> all,
        PaperFormat format,
        Func<Pattern, string> ofPattern,
        Func<WasteCause, string> ofCause
    )
    {
        var segments = all.ToList();
        var used = segments.Select(Patterns.Of).ToHashSet();
        var causes = segments
            .Where(s => Patterns.Of(s) == Pattern.Waste)
            .Select(s => s.Cause!.Value)
            .Distinct()
            .Order()
            .Select(c => format.CauseLetter(c) + " " + format.Cause(c) + ofCause(c));
        return from entry in _words
               where used.Contains(entry.Pattern)
               let word = format.Words[entry.Word]
               select (
                   (Pattern?)entry.Pattern,
                   entry.Pattern == Pattern.Waste ? $"{word}: {string.Join(", ", causes)}" : word + ofPattern(entry.Pattern)
               );
    }

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
