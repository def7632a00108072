namespace Spoolbook.Pdf.Documents;

/// <summary>
/// What a file says of itself. The moment of making comes from outside, so that the same pages make the same file.
/// The language is a tag such as "en" or "de-AT"; to be accessible is to claim PDF/UA-1, which a caller may do only where
/// every point of it has been seen to hold.
/// </summary>
public sealed record DocumentIdentity(string Title, string Author, string Language, DateTimeOffset Made, string Producer, bool Accessible);
