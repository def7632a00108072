namespace Spoolbook.Papers.Workbook;

/// <summary>A column of a table in a chart.</summary>
/// <param name="Head">Its head, as in the workbook.</param>
/// <param name="HeadAt">Where that is, with the sheet.</param>
/// <param name="At">Where its cells are, with the sheet.</param>
/// <param name="Cells">What they come to: words or numbers, nothing in an empty one.</param>
sealed record ChartColumn(string Head, string HeadAt, string At, IReadOnlyList<CellValue> Cells);
