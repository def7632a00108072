namespace Spoolbook.Entry;

/// <summary>A file of the record before and after.</summary>
/// <param name="Name">Its path from the production's folder.</param>
/// <param name="Before">Null where it is new.</param>
/// <param name="After">Null where it goes.</param>
public sealed record ChangedFile(string Name, string? Before, string? After);
