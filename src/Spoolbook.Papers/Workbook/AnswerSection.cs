namespace Spoolbook.Papers.Workbook;

/// <summary>Figures of the first sheet under a heading, and what limits them, a sentence each.</summary>
sealed record AnswerSection(string Heading, IReadOnlyList<AnswerCard> Cards, IReadOnlyList<string> Notes);
