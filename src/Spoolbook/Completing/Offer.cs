namespace Spoolbook.Completing;

/// <summary>A word that a shell offers at a press of the tabulator.</summary>
/// <param name="Word">What would be typed.</param>
/// <param name="About">What it is, on one line; empty where the word says it.</param>
internal readonly record struct Offer(string Word, string About = "");
