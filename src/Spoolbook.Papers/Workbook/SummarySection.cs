namespace Spoolbook.Papers.Workbook;

/// <summary>Some lines of the summary under a heading.</summary>
sealed record SummarySection(string Heading, IReadOnlyList<SummaryLine> Lines);
