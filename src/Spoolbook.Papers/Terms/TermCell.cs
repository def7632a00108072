namespace Spoolbook.Papers.Terms;

/// <summary>A cell of a table of the term.</summary>
/// <param name="Text">Its text, ready to print.</param>
/// <param name="Number">The same as a number for the workbook; null for a text.</param>
public sealed record TermCell(string Text, decimal? Number = null)
{
    /// <summary>Where the text leads; empty for nowhere.</summary>
    public string Link { get; init; } = "";
}
