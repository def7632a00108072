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
                if (Above(label, width, ends) is not { } above)
                {
                    return null;
                }

                placed.Add(above);
            }

            ends[placed[^1].Level] = placed[^1].Left + placed[^1].Width;
        }

        return placed.DrainToImmutable();
    }

    /// <summary>Places the labels of one lane that fit into their boxes, and leaves out the others.</summary>
    public static ImmutableArray<PlacedLabel> Inside(IEnumerable<Label> labels, double width)
    {
        var placed = ImmutableArray.CreateBuilder<PlacedLabel>();
        foreach (var label in labels.OrderBy(l => l.At))
        {
            var end = placed.Count == 0 ? double.NegativeInfinity : placed[^1].Left + placed[^1].Width;
            if (InItsBox(label, width, end) is { } inside)
            {
                placed.Add(inside);
            }
        }

        return placed.DrainToImmutable();
    }

    static PlacedLabel? InItsBox(Label label, double width, double end)
    {
        foreach (var text in label.Texts)
        {
            var (needs, left) = Spread(text, label, width);
            if (needs + Gap <= label.Room && end + Gap <= left)
            {
                return new PlacedLabel(label, text, 0, left, needs);
            }
        }

        return null;
    }

    static PlacedLabel? Above(Label label, double width, double[] ends)
    {
        foreach (var text in label.Number is { } number ? (string[])[label.Text, number] : [label.Text])
        {
            var (needs, left) = Spread(text, label, width);
            if (Enumerable.Range(1, Levels).FirstOrDefault(l => ends[l] + Gap <= left) is var level and > 0)
            {
                return new PlacedLabel(label, text, level, left, needs);
            }
        }

        return null;
    }

    static (double Needs, double Left) Spread(string text, Label label, double width)
    {
        var needs = SvgWriter.WidthOf(text, label.Bold);
        return (needs, Math.Clamp(label.At - (needs / 2), 0, Math.Max(0, width - needs)));
    }
}
