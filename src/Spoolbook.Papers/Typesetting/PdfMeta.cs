namespace Spoolbook.Papers.Typesetting;

/// <summary>The file's own data. The time of making comes from the caller, never from the clock.</summary>
public sealed record PdfMeta(string Title, string Author, string Language, DateTimeOffset Made);
