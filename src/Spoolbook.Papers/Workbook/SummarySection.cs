namespace Spoolbook.Papers.Workbook;

/// <summary>Lines of the summary under a heading.</summary>
sealed record SummarySection(string Heading, IReadOnlyList<SummaryLine> Lines);
