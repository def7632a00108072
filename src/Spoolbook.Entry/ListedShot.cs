namespace Spoolbook.Entry;

/// <summary>A shot on a shot list that was typed elsewhere. The list does not have what is null.</summary>
/// <param name="Screen">Screen time wanted, as a record writes it: <c>12s</c>.</param>
/// <param name="Light">Daylight, tungsten or mixed, as a record writes it.</param>
public sealed record ListedShot(string Scene, string? Shot, string? What, string? Screen, string? Light);
