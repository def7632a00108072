using System.Collections.Immutable;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Accounts;

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

    /// <summary>The legend of the patterns that are used, with the letters of the causes of waste.</summary>
    /// <param name="note">What else there is to say of the pictures; null for nothing.</param>
    public Legend(IEnumerable<RollBook> rolls, PaperFormat format, string? note = null)
    {
        var segments = rolls.SelectMany(r => r.Strip.Segments).ToList();
        var used = segments.Select(Patterns.Of).ToHashSet();
        var causes = segments
            .Where(s => Patterns.Of(s) == Pattern.Waste)
            .Select(s => s.Cause!.Value)
            .Distinct()
            .Order()
            .Select(c => format.CauseLetter(c) + " " + format.Cause(c));
        _entries =
        [
            .. from entry in _words
            where used.Contains(entry.Pattern)
            let word = format.Words[entry.Word]
            select ((Pattern?)entry.Pattern, entry.Pattern == Pattern.Waste ? $"{word}: {string.Join(", ", causes)}" : word),
            .. note is null ? [] : new (Pattern?, string)[] { (null, note) },
        ];
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
