namespace Spoolbook.Reading.Files;

/// <summary>A file that lies among the sheets and is not read as one.</summary>
/// <param name="Name">Its path from the production's folder, with forward slashes.</param>
/// <param name="Top">The first of its text; empty where it holds none.</param>
public sealed record PassedFile(string Name, string Top);
