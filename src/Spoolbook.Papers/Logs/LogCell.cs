namespace Spoolbook.Papers.Logs;

/// <summary>A cell of a line of the log.</summary>
/// <param name="Column">The name of its column.</param>
public sealed record LogCell(string Column, string Text);
