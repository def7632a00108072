namespace Spoolbook.Entry.Tables;

/// <summary>Cells that are merged into one.</summary>
/// <param name="Range">In a spreadsheet's notation: <c>B5:B7</c>.</param>
sealed record MergedCells(string Range, int FirstRow, int LastRow);
