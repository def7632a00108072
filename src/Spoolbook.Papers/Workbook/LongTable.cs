namespace Spoolbook.Papers.Workbook;

/// <summary>A table of which the library knows the beginning.</summary>
/// <param name="Name">Its name in formulas.</param>
/// <param name="Known">The cells that the library takes for it.</param>
/// <param name="Whole">All its cells.</param>
sealed record LongTable(string Name, string Known, string Whole)
{
    /// <summary>A part of the file with the whole of the table, where the part is about this one.</summary>
    public string Lengthen(string part) =>
        part.Contains($"displayName=\"{Name}\"", StringComparison.Ordinal)
            ? part.Replace($"ref=\"{Known}\"", $"ref=\"{Whole}\"", StringComparison.Ordinal)
            : part;
}
