namespace Spoolbook.Papers.Pictures;

/// <summary>A label and the take that it belongs to.</summary>
/// <param name="Short">What does where the whole text is wider than the take.</param>
/// <param name="At">The middle of the take.</param>
/// <param name="Room">The take's width.</param>
readonly record struct Label(string Text, string Short, double At, double Room);
