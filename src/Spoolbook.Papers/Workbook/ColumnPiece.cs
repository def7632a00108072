namespace Spoolbook.Papers.Workbook;

/// <summary>A column of a table, or its cell in the same row.</summary>
/// <param name="Table">The table's name; null for the formula's own.</param>
sealed record ColumnPiece(string? Table, bool OfThisRow, string Head) : FormulaPiece;
