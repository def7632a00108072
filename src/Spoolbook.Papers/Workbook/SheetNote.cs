namespace Spoolbook.Papers.Workbook;

/// <summary>A sheet that is a table.</summary>
sealed record SheetNote(string Name, string Table, string About, int PagesWide, IReadOnlyList<ColumnNote> Columns);
