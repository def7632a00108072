using System.Collections.Immutable;

namespace Spoolbook.Shoot.Records;

/// <summary>One thing that happened to raw stock outside of a camera, in the order of the log.</summary>
/// <param name="Place">The word that the entry begins with.</param>
public abstract record StockEntry(Place Place)
{
    /// <summary>When.</summary>
    public required Located<StockTime> On { get; init; }

    /// <summary>The lot that it happened to; null where it happened to a short end.</summary>
    public Located<string>? Lot { get; init; }

    /// <summary>The units of the lot, by the numbers on their cans; empty where it happened to all of them or to a short end.</summary>
    public ImmutableArray<Located<int>> Units { get; init; } = [];

    /// <summary>The roll whose short end it happened to; null where it happened to units.</summary>
    public Located<string>? ShortEndOf { get; init; }

    /// <summary>Remarks.</summary>
    public Located<string>? Note { get; init; }

    /// <summary>The key that the entry is written under: <c>sent-away</c>, <c>lost</c>, …</summary>
    public abstract string Word { get; }

    /// <summary>
    /// The moment that it is put at among loads: the start of a day without a time for what came and what was taken out of the cold, else
    /// its end.
    /// </summary>
    public virtual DateTime At => On.Value.Latest;
}
