namespace Spoolbook.Pdf.Documents;

/// <summary>
/// The file's own title, author and language. The caller passes in the time, so that the same pages make the same file.
/// The language is a tag such as "en" or "de-AT". Accessible claims PDF/UA-1: set it only after checking every point of it.
/// </summary>
public sealed record DocumentIdentity(string Title, string Author, string Language, DateTimeOffset Made, string Producer, bool Accessible);
