namespace Spoolbook.Papers.Workbook;

/// <summary>A line of the summary.</summary>
/// <param name="Formula">Null where the figure is typed.</param>
/// <param name="Name">The defined name of the figure's cell; null where it has none.</param>
sealed record LineNote(string Label, string? Formula, CellFormat Format, string? Name);
