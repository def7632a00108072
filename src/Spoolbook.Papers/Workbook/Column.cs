using Spoolbook.Film;

namespace Spoolbook.Papers.Workbook;

/// <summary>A column of a table.</summary>
/// <param name="Head">Its head in the house's terms; in formulas <c>[@Head]</c> is the cell of the same row.</param>
/// <param name="Format">Its format.</param>
/// <param name="Width">Its width in characters.</param>
/// <param name="Value">The value in a row.</param>
sealed record Column<TRow>(string Head, CellFormat Format, double Width, Func<TRow, CellValue> Value)
{
    /// <summary>Whether its sum is above the table.</summary>
    public bool Summed { get; init; }

    /// <summary>What may be typed into its cells; null for anything.</summary>
    public Allowed? Allowed { get; init; }

    /// <summary>The house's codes in its cells; none for a column of free text.</summary>
    public IReadOnlyList<string> Codes
    {
        get => field ?? (Allowed is { Strict: true } allowed ? allowed.Words : []);
        init;
    }

    /// <summary>Whether it is a step on the way to a figure: beside the printed columns, and not printed.</summary>
    public bool Aside { get; init; }

    /// <summary>Of a length: the head of the column with its frames.</summary>
    public string? FramesHead { get; init; }

    /// <summary>Of a length: its film.</summary>
    public Func<TRow, Footage>? Film { get; init; }

    /// <summary>Of a length: the column with its frames, if no other column has them.</summary>
    public Column<TRow>? Frames { get; init; }

    /// <summary>Whether bars show the size of its values.</summary>
    public bool Bars { get; init; }
}
