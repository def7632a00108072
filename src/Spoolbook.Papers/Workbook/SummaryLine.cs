namespace Spoolbook.Papers.Workbook;

/// <summary>A line of the summary: its label, its figure, and a remark.</summary>
/// <param name="Name">The defined name of its cell, for formulas; null for none.</param>
sealed record SummaryLine(string Label, CellValue Value, CellFormat Format, string Remark, string? Name = null);
