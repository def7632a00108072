using System.Collections.Immutable;

namespace Spoolbook.Papers.Pictures;

/// <summary>
/// Puts labels into their boxes, or with leaders into rows above, so that none overlap and no leader runs behind another
/// label: below that one it would seem to be its own.
/// </summary>
static class TakeLabels
{
    /// <summary>The most rows of labels above a lane.</summary>
    public const int Levels = 4;

    const double Gap = 2.5;

    // How far a leader stays clear of another label's plate.
    const double Clear = 1.2;

    // So many places are tried for the labels of a lane. A lane that has room needs far fewer.
    const int MostTries = 4000;

    /// <summary>Places the labels of one lane, from left to right; null if they do not all fit.</summary>
    /// <param name="labels">In the order of their takes on the film.</param>
    /// <param name="width">The lane's width.</param>
    public static ImmutableArray<PlacedLabel>? Place(IEnumerable<Label> labels, double width)
    {
        var waiting = new List<Label>();
        var inside = new List<PlacedLabel>();
        foreach (var label in labels.OrderBy(l => l.At))
        {
            if (InItsBox(label, width, inside.Count == 0 ? double.NegativeInfinity : inside[^1].Right) is { } placed)
            {
                inside.Add(placed);
            }
            else
            {
                waiting.Add(label);
            }
        }

        foreach (var byNumber in (bool[])[false, true])
        {
            var above = new List<PlacedLabel>();
            var tries = MostTries;
            if (Raise(waiting, width, byNumber, above, ref tries))
            {
                return [.. inside.Concat(above).OrderBy(l => l.Label.At)];
            }
        }

        return null;
    }

    /// <summary>Places the labels of one lane that fit into their boxes, and leaves out the others.</summary>
    public static ImmutableArray<PlacedLabel> Inside(IEnumerable<Label> labels, double width)
    {
        var placed = ImmutableArray.CreateBuilder<PlacedLabel>();
        foreach (var label in labels.OrderBy(l => l.At))
        {
            var end = placed.Count == 0 ? double.NegativeInfinity : placed[^1].Right;
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

    // The first place that fits may leave none for the next label: then another is tried.
    static bool Raise(List<Label> labels, double width, bool byNumber, List<PlacedLabel> above, ref int tries)
    {
        if (above.Count == labels.Count)
        {
            return true;
        }

        foreach (var candidate in Places(labels[above.Count], width, byNumber))
        {
            if (--tries < 0)
            {
                return false;
            }

            if (above.TrueForAll(other => AreClear(candidate, other)))
            {
                above.Add(candidate);
                if (Raise(labels, width, byNumber, above, ref tries))
                {
                    return true;
                }

                above.RemoveAt(above.Count - 1);
            }
        }

        return false;
    }

    // As low as it fits: over the middle of its take, or like a flag beside its leader.
    static IEnumerable<PlacedLabel> Places(Label label, double width, bool byNumber) =>
        from text in label.Number is { } number ? (string[])(byNumber ? [number] : [label.Text, number]) : [label.Text]
        let spread = Spread(text, label, width)
        from level in Enumerable.Range(1, Levels)
        from left in (double[])[spread.Left, label.At - 1, label.At - spread.Needs + 1]
        select new PlacedLabel(label, text, level, Math.Clamp(left, 0, Math.Max(0, width - spread.Needs)), spread.Needs);

    static bool AreClear(PlacedLabel one, PlacedLabel other) =>
        one.Level == other.Level ? one.Right + Gap <= other.Left || other.Right + Gap <= one.Left
        : one.Level > other.Level ? IsClear(one.Label.At, other)
        : IsClear(other.Label.At, one);

    static bool IsClear(double leader, PlacedLabel below) => leader < below.Left - Clear || leader > below.Right + Clear;

    static (double Needs, double Left) Spread(string text, Label label, double width)
    {
        var needs = SvgWriter.WidthOf(text, label.Bold);
        return (needs, Math.Clamp(label.At - (needs / 2), 0, Math.Max(0, width - needs)));
    }
}
