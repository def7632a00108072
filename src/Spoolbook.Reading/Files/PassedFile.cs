namespace Spoolbook.Reading.Files;

/// <summary>A file among the sheets that is not read as one.</summary>
/// <param name="Name">Its path from the production's folder, with forward slashes.</param>
/// <param name="Top">The start of its text; empty where it has none.</param>
public sealed record PassedFile(string Name, string Top);
