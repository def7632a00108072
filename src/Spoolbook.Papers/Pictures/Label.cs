namespace Spoolbook.Papers.Pictures;

/// <summary>A take's label.</summary>
/// <param name="Short">The text to use where the whole one is wider than the take.</param>
/// <param name="At">The middle of the take.</param>
/// <param name="Room">The take's width.</param>
readonly record struct Label(string Text, string Short, double At, double Room);
