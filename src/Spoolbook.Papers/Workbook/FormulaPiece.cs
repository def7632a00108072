namespace Spoolbook.Papers.Workbook;

/// <summary>A piece of a formula.</summary>
abstract record FormulaPiece;
