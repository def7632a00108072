namespace Spoolbook.Papers.Pictures;

/// <summary>Where a label went.</summary>
/// <param name="Text">What of it is written.</param>
/// <param name="Level">0 in the take's box; from 1 in rows above it, on a leader.</param>
/// <param name="Left">Where its text starts.</param>
/// <param name="Width">How wide its text is.</param>
readonly record struct PlacedLabel(Label Label, string Text, int Level, double Left, double Width);
