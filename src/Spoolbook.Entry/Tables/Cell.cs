namespace Spoolbook.Entry.Tables;

/// <summary>A cell that is not empty.</summary>
/// <param name="Column">Its column; from 0.</param>
/// <param name="Address">Where a person finds it.</param>
/// <param name="Text">Its contents: words as written, a number with a decimal point, a date as <c>2026-10-04</c>.</param>
sealed record Cell(int Column, string Address, CellKind Kind, string Text)
{
    /// <summary>The number in it; null in other cells.</summary>
    public double? Number { get; init; }

    /// <summary>Whether it has a formula. Its contents are then the formula's last saved value.</summary>
    public bool IsFormula { get; init; }

    /// <summary>A column's letters: <c>A</c>, <c>Z</c>, <c>AA</c>.</summary>
    public static string Letters(int column)
    {
        var letters = "";
        for (var left = column; left >= 0; left = (left / 26) - 1)
        {
            letters = (char)('A' + (left % 26)) + letters;
        }

        return letters;
    }
}
