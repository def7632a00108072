using System.Collections.Immutable;
using System.Globalization;

namespace Spoolbook.Entry.Tables;

/// <summary>What kind of thing stands in a cell.</summary>
enum CellKind
{
    /// <summary>Words, or a number written as words in a text file.</summary>
    Words,

    /// <summary>A number of a workbook.</summary>
    Number,

    /// <summary>A date of a workbook, with or without a time of day.</summary>
    Date,

    /// <summary>Yes or no.</summary>
    Truth,

    /// <summary>What a formula gave that could not be worked out: <c>#REF!</c>.</summary>
    Fault,
}

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

/// <summary>A row in which something stands.</summary>
/// <param name="Number">Its number; in a text file the line that it begins on. From 1.</param>
sealed record Row(int Number, string Address, ImmutableArray<Cell> Cells)
{
    /// <summary>Whether it was hidden, by a filter or by hand.</summary>
    public bool IsHidden { get; init; }
}

/// <summary>The cells of a sheet, or of a text file.</summary>
/// <param name="Name">The sheet's name, or the file's.</param>
sealed record Table(string Name, ImmutableArray<Row> Rows)
{
    /// <summary>Ranges of merged cells: the first cell of each, and its address.</summary>
    public ImmutableArray<MergedCells> Merged { get; init; } = [];

    /// <summary>Whether it is a text file: numbers are written as a person, or a spreadsheet program, shows them.</summary>
    public bool IsText { get; init; }

    /// <summary>How an address in it is told.</summary>
    public string Address(int row, int column) => IsText
        ? string.Create(CultureInfo.InvariantCulture, $"{Name}:{row}:{Cell.Letters(column)}")
        : string.Create(CultureInfo.InvariantCulture, $"{Name}!{Cell.Letters(column)}{row}");
}

/// <summary>Cells that are merged into one.</summary>
/// <param name="Range">As a spreadsheet writes it: <c>B5:B7</c>.</param>
sealed record MergedCells(string Range, int FirstRow, int LastRow);
