namespace Spoolbook.Papers.Workbook;

/// <summary>A table.</summary>
/// <param name="Page">The name of its sheet.</param>
sealed record SheetNote(string Name, string Table, string About, string Page, IReadOnlyList<ColumnNote> Columns);
