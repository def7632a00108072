namespace Spoolbook.Papers.Jobs;

/// <summary>A link to a paper.</summary>
public sealed record PaperLink(string What, string Page, string Pdf);
