namespace Spoolbook.Entry;

/// <summary>A roll file before and after.</summary>
/// <param name="Name">Its path from the production's folder.</param>
public sealed record ChangedFile(string Name, string Before, string After);
