namespace Spoolbook.Entry;

/// <summary>A shot of a shot list that was typed elsewhere. What is null is not in the list.</summary>
/// <param name="Screen">Time wanted on the screen, as a record writes it: <c>12s</c>.</param>
/// <param name="Light">Daylight, tungsten or mixed, as a record writes it.</param>
public sealed record ListedShot(string Scene, string? Shot, string? What, string? Screen, string? Light);
