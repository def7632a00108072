namespace Spoolbook.Papers.Pictures;

/// <summary>A label in its place.</summary>
/// <param name="Text">The text written.</param>
/// <param name="Level">0 in the take's box; from 1 in rows above it, with a leader.</param>
/// <param name="Left">Where its text starts.</param>
/// <param name="Width">How wide its text is.</param>
readonly record struct PlacedLabel(Label Label, string Text, int Level, double Left, double Width)
{
    /// <summary>Where its text ends.</summary>
    public double Right => Left + Width;
}
