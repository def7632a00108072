using System.Collections.Immutable;

namespace Spoolbook.Shoot.Records;

/// <summary>One thing that happened to raw stock outside a camera, in the order of the log.</summary>
/// <param name="Place">The entry's first word.</param>
public abstract record StockEntry(Place Place)
{
    /// <summary>When.</summary>
    public required Located<StockTime> On { get; init; }

    /// <summary>The lot; null for a short end.</summary>
    public Located<string>? Lot { get; init; }

    /// <summary>The units of the lot, by the numbers on their cans; empty for the whole lot or a short end.</summary>
    public ImmutableArray<Located<int>> Units { get; init; } = [];

    /// <summary>The parent roll of the short end; null for units.</summary>
    public Located<string>? ShortEndOf { get; init; }

    /// <summary>Which piece of a short end that was split, from 1; null for all of them, or where there is one.</summary>
    public Located<int>? Piece { get; init; }

    /// <summary>Remarks.</summary>
    public Located<string>? Note { get; init; }

    /// <summary>The entry's key in the log: <c>sent-away</c>, <c>lost</c>, …</summary>
    public abstract string Word { get; }

    /// <summary>
    /// Its place in time among the loads. Without a time, the start of the day for stock that came or was taken out of
    /// the cold, else the end.
    /// </summary>
    public virtual DateTime At => On.Value.Latest;
}
