using System.Collections.Immutable;

namespace Spoolbook.Papers.Pictures;

/// <summary>A label and the take that it belongs to.</summary>
/// <param name="At">The middle of the take.</param>
/// <param name="Room">The take's width.</param>
readonly record struct Label(string Text, double At, double Room);

/// <summary>Where a label went.</summary>
/// <param name="Level">0 in the take's box; from 1 in rows above it, on a leader.</param>
/// <param name="Left">Where its text starts.</param>
/// <param name="Width">How wide its text is.</param>
readonly record struct PlacedLabel(Label Label, int Level, double Left, double Width);

/// <summary>Puts labels into their boxes, or on leaders into rows above, so that none lies on another.</summary>
static class TakeLabels
{
    /// <summary>The most rows of labels above a lane.</summary>
    public const int Levels = 4;

    const double Gap = 2.5;

    /// <summary>Places the labels of one lane, from left to right; null if they do not all find room.</summary>
    /// <param name="labels">In the order of their takes on the film.</param>
    /// <param name="width">The lane's width.</param>
    public static ImmutableArray<PlacedLabel>? Place(IEnumerable<Label> labels, double width)
    {
        var ends = Enumerable.Repeat(double.NegativeInfinity, Levels + 1).ToArray();
        var placed = ImmutableArray.CreateBuilder<PlacedLabel>();
        foreach (var label in labels.OrderBy(l => l.At))
        {
            var needs = SvgWriter.WidthOf(label.Text);
            var left = Math.Clamp(label.At - (needs / 2), 0, Math.Max(0, width - needs));
            var level = Enumerable.Range(0, Levels + 1).FirstOrDefault(l => l == 0 ? needs + Gap <= label.Room && ends[0] + Gap <= left : ends[l] + Gap <= left, -1);
            if (level < 0)
            {
                return null;
            }

            ends[level] = left + needs;
            placed.Add(new PlacedLabel(label, level, left, needs));
        }

        return placed.DrainToImmutable();
    }
}
