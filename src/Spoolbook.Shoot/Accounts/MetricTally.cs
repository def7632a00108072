using System.Collections.Immutable;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Shoot.Accounts;

/// <summary>A tally in whole centimetres, as a metric paper prints it: good + hold + no good + waste + short end = loaded.</summary>
public sealed record MetricTally(long Good, long Hold, long NoGood, long ShortEnd, ImmutableSortedDictionary<WasteCause, long> Wasted)
{
    /// <summary>No film.</summary>
    public static MetricTally None { get; } = new(0, 0, 0, 0, ImmutableSortedDictionary<WasteCause, long>.Empty);

    /// <summary>The sum over all causes.</summary>
    public long Waste => Wasted.Values.Sum();

    /// <summary>All but the short end.</summary>
    public long Exposed => Good + Hold + NoGood + Waste;

    /// <summary>What is in the exposed can: an end that was thrown away is not.</summary>
    public long InCan => Exposed - Wasted.GetValueOrDefault(WasteCause.End);

    /// <summary>What was loaded.</summary>
    public long Loaded => Exposed + ShortEnd;

    /// <summary>Two tallies added, account by account.</summary>
    public static MetricTally operator +(MetricTally a, MetricTally b) =>
        new(
            a.Good + b.Good,
            a.Hold + b.Hold,
            a.NoGood + b.NoGood,
            a.ShortEnd + b.ShortEnd,
            a.Wasted.Keys.Union(b.Wasted.Keys)
                .ToImmutableSortedDictionary(cause => cause, cause => a.Wasted.GetValueOrDefault(cause) + b.Wasted.GetValueOrDefault(cause))
        );
}
