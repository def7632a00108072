namespace Spoolbook.Papers.Workbook;

/// <summary>A large figure of the first sheet.</summary>
/// <param name="What">What it is, above it.</param>
/// <param name="Value">The figure.</param>
/// <param name="Says">How it reads, for its size.</param>
/// <param name="Wide">Columns of the sheet.</param>
sealed record AnswerCard(string What, CellValue Value, string Says, int Wide)
{
    /// <summary>The number format; null for words.</summary>
    public string? NumberFormat { get; init; }
}
