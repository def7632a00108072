using Spoolbook.Papers.Wording;

namespace Spoolbook.Papers.Pictures;

/// <summary>The legend of the patterns, in as many lines as the width needs.</summary>
static class Legend
{
    const double LineHeight = 11;
    const double Swatch = 16;

    static readonly (Pattern Pattern, string Word)[] _entries =
    [
        (Pattern.Good, "good"),
        (Pattern.Hold, "hold"),
        (Pattern.NoGood, "no-good"),
        (Pattern.Waste, "waste"),
        (Pattern.Fog, "picture-fog"),
        (Pattern.ShortEnd, "short-end"),
    ];

    /// <summary>The words of the legend.</summary>
    public static IEnumerable<string> Words(IReadOnlySet<Pattern> used, PaperFormat format) =>
        _entries.Where(e => used.Contains(e.Pattern)).Select(e => format.Words[e.Word]);

    /// <summary>Draws it, and returns its height.</summary>
    public static double Draw(SvgWriter svg, IReadOnlySet<Pattern> used, double width, double top, PaperFormat format)
    {
        var (x, y) = (0.0, top);
        foreach (var (pattern, key) in _entries.Where(e => used.Contains(e.Pattern)))
        {
            var word = format.Words[key];
            var needs = Swatch + 3 + SvgWriter.WidthOf(word) + 12;
            if (x + needs > width)
            {
                (x, y) = (0, y + LineHeight);
            }

            Patterns.Draw(svg, new Box(x + 0.5, y + 0.5, Swatch, 8), pattern);
            svg.Text(x + Swatch + 4, y + 7.2, word);
            x += needs;
        }

        return y + LineHeight - top;
    }
}
