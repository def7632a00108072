namespace Spoolbook.Entry.Tables;

/// <summary>A cell in which something stands.</summary>
/// <param name="Column">Its column; from 0.</param>
/// <param name="Address">How a person finds it.</param>
/// <param name="Text">What stands in it: words as they are, a number with a decimal point, a date as <c>2026-10-04</c>.</param>
sealed record Cell(int Column, string Address, CellKind Kind, string Text)
{
    /// <summary>The number that stands in it; null in other cells.</summary>
    public double? Number { get; init; }

    /// <summary>Whether a formula stands in it, and this is what it came to when the file was saved.</summary>
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
