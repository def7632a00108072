namespace Spoolbook.Papers.Workbook;

/// <summary>A line of the summary: its label, its figure, and a remark.</summary>
/// <param name="Name">The defined name of its cell, by which formulas look at it; null for none.</param>
sealed record SummaryLine(string Label, CellValue Value, CellFormat Format, string Remark, string? Name = null);
