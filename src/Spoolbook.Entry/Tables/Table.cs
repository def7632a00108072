using System.Collections.Immutable;
using System.Globalization;

namespace Spoolbook.Entry.Tables;

/// <summary>The cells of a sheet, or of a text file.</summary>
/// <param name="Name">The sheet's name, or the file's.</param>
sealed record Table(string Name, ImmutableArray<Row> Rows)
{
    /// <summary>Ranges of merged cells: the first cell of each, and its address.</summary>
    public ImmutableArray<MergedCells> Merged { get; init; } = [];

    /// <summary>Whether it is a text file, where numbers are written as a person or a spreadsheet program shows them.</summary>
    public bool IsText { get; init; }

    /// <summary>The address of a cell, for messages.</summary>
    public string Address(int row, int column) =>
        IsText
            ? string.Create(CultureInfo.InvariantCulture, $"{Name}:{row}:{Cell.Letters(column)}")
            : string.Create(CultureInfo.InvariantCulture, $"{Name}!{Cell.Letters(column)}{row}");
}
