namespace Spoolbook.Papers.Typesetting;

/// <summary>What the file says of itself. The moment of making is the caller's, never the clock's.</summary>
public sealed record PdfMeta(string Title, string Author, string Language, DateTimeOffset Made);
