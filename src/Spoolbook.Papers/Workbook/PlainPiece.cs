namespace Spoolbook.Papers.Workbook;

/// <summary>Functions, operators, names, numbers.</summary>
sealed record PlainPiece(string Text) : FormulaPiece;
