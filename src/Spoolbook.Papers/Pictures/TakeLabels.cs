using System.Collections.Immutable;

namespace Spoolbook.Papers.Pictures;

/// <summary>Puts labels into their boxes, or with leaders into rows above, so that none overlap.</summary>
static class TakeLabels
{
    /// <summary>The most rows of labels above a lane.</summary>
    public const int Levels = 4;

    const double Gap = 2.5;

    /// <summary>Places the labels of one lane, from left to right; null if they do not all fit.</summary>
    /// <param name="labels">In the order of their takes on the film.</param>
    /// <param name="width">The lane's width.</param>
    public static ImmutableArray<PlacedLabel>? Place(IEnumerable<Label> labels, double width)
    {
        var ends = Enumerable.Repeat(double.NegativeInfinity, Levels + 1).ToArray();
        var placed = ImmutableArray.CreateBuilder<PlacedLabel>();
        foreach (var label in labels.OrderBy(l => l.At))
        {
            if (InItsBox(label, width, ends[0]) is { } inside)
            {
                placed.Add(inside);
            }
            else
            {
                var (needs, left) = Spread(label.Text, label.At, width);
                var level = Enumerable.Range(1, Levels).FirstOrDefault(l => ends[l] + Gap <= left);
                if (level == 0)
                {
                    return null;
                }

                placed.Add(new PlacedLabel(label, label.Text, level, left, needs));
            }

            ends[placed[^1].Level] = placed[^1].Left + placed[^1].Width;
        }

        return placed.DrainToImmutable();
    }

    static PlacedLabel? InItsBox(Label label, double width, double end)
    {
        foreach (var text in (string[])[label.Text, label.Short])
        {
            var (needs, left) = Spread(text, label.At, width);
            if (needs + Gap <= label.Room && end + Gap <= left)
            {
                return new PlacedLabel(label, text, 0, left, needs);
            }
        }

        return null;
    }

    static (double Needs, double Left) Spread(string text, double at, double width)
    {
        var needs = SvgWriter.WidthOf(text);
        return (needs, Math.Clamp(at - (needs / 2), 0, Math.Max(0, width - needs)));
    }
}
