using System.Collections.Immutable;

namespace Spoolbook.Papers.Typesetting.Drawing;

/// <summary>Marks clipped to a rectangle.</summary>
sealed record ClipMark(double X, double Y, double Width, double Height, ImmutableArray<PageMark> Inside) : PageMark
{
    public override PageMark Shift(double dx, double dy) =>
        this with
        {
            X = X + dx,
            Y = Y + dy,
            Inside = [.. Inside.Select(mark => mark.Shift(dx, dy))],
        };
}
