namespace Spoolbook.Papers.Workbook;

/// <summary>A column of a table.</summary>
/// <param name="Head">Its head in the house's terms; in formulas <c>[@Head]</c> is the cell of the same row.</param>
/// <param name="Format">How it is written.</param>
/// <param name="Width">Its width in characters.</param>
/// <param name="Value">What stands in a row.</param>
sealed record Column<TRow>(string Head, CellFormat Format, double Width, Func<TRow, CellValue> Value)
{
    /// <summary>Whether its sum stands above the table.</summary>
    public bool Summed { get; init; }

    /// <summary>What may stand in its cells; null where anything may.</summary>
    public Allowed? Allowed { get; init; }

    /// <summary>The house's codes that its cells hold or come to; none where they hold what somebody wrote.</summary>
    public IReadOnlyList<string> Codes
    {
        get => field ?? (Allowed is { Strict: true } allowed ? allowed.Words : []);
        init;
    }

    /// <summary>Whether bars show its size.</summary>
    public bool Bars { get; init; }
}
