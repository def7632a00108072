using System.Collections.Immutable;

namespace Spoolbook.Entry.Tables;

/// <summary>A row that is not empty.</summary>
/// <param name="Number">Its number, from 1; in a text file, the line it begins on.</param>
sealed record Row(int Number, string Address, ImmutableArray<Cell> Cells)
{
    /// <summary>Whether a filter or a person hid it.</summary>
    public bool IsHidden { get; init; }
}
