namespace Spoolbook.Papers.Workbook;

/// <summary>A line of the summary.</summary>
/// <param name="Formula">Its formula; null for a typed figure.</param>
/// <param name="Name">The defined name of the figure's cell; null for none.</param>
sealed record LineNote(string Label, string? Formula, CellFormat Format, string? Name);
