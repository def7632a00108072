namespace Spoolbook.Papers.Workbook;

/// <summary>Words in quotes, without the quotes.</summary>
sealed record QuotedText(string Text) : FormulaPiece;
