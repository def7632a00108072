namespace Spoolbook.Papers.Typesetting.Drawing;

/// <summary>One thing to draw, in points from the top left of its slice. Layout makes marks; only the painter draws.</summary>
abstract record PageMark
{
    public abstract PageMark Shift(double dx, double dy);
}
