namespace Spoolbook.Papers.Terms;

/// <summary>A column of a table of the term.</summary>
/// <param name="Head">Its head.</param>
/// <param name="IsNumber">Whether its cells are numbers, set to the right.</param>
public sealed record TermColumn(string Head, bool IsNumber = false);
