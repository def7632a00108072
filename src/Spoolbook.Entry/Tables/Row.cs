using System.Collections.Immutable;

namespace Spoolbook.Entry.Tables;

/// <summary>A row in which something stands.</summary>
/// <param name="Number">Its number; in a text file the line that it begins on. From 1.</param>
sealed record Row(int Number, string Address, ImmutableArray<Cell> Cells)
{
    /// <summary>Whether it was hidden, by a filter or by hand.</summary>
    public bool IsHidden { get; init; }
}
