using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Shoot.Accounts;

/// <summary>
/// Film counted by account, every frame once: good + hold + no good + waste + short end = loaded. <see cref="Empty"/>
/// is no film.
/// </summary>
public sealed record Tally
{
    /// <summary>No film.</summary>
    public static Tally Empty { get; } = new();

    /// <summary>G.</summary>
    public Footage Good { get; init; }

    /// <summary>H.</summary>
    public Footage Hold { get; init; }

    /// <summary>NG.</summary>
    public Footage NoGood { get; init; }

    /// <summary>SE.</summary>
    public Footage ShortEnd { get; init; }

    /// <summary>W by cause; a cause that took no film is absent.</summary>
    public ImmutableSortedDictionary<WasteCause, Footage> Wasted { get; init; } = ImmutableSortedDictionary<WasteCause, Footage>.Empty;

    /// <summary>W: the sum over all causes.</summary>
    public Footage Waste => Wasted.Values.Aggregate(Footage.Zero, (sum, length) => sum + length);

    /// <summary>Film run in takes: G + H + NG, and tests.</summary>
    public Footage Shot => Good + Hold + NoGood + WastedBy(WasteCause.Test);

    /// <summary>Film exposed or lost: all but the short end.</summary>
    public Footage Exposed => Good + Hold + NoGood + Waste;

    /// <summary>What is in the exposed can, and what the lab will process: an end that was thrown away is not.</summary>
    public Footage InCan => Exposed - WastedBy(WasteCause.End);

    /// <summary>Everything: what was loaded.</summary>
    public Footage Loaded => Exposed + ShortEnd;

    /// <summary>Waste by one cause.</summary>
    public Footage WastedBy(WasteCause cause) => Wasted.GetValueOrDefault(cause);

    /// <summary>This tally with a length of film added to one account.</summary>
    public Tally With(Account account, WasteCause? cause, Footage length) =>
        account switch
        {
            Account.Good => this with { Good = Good + length },
            Account.Hold => this with { Hold = Hold + length },
            Account.NoGood => this with { NoGood = NoGood + length },
            Account.ShortEnd => this with { ShortEnd = ShortEnd + length },
            Account.Waste when cause is { } why => this with { Wasted = Wasted.SetItem(why, WastedBy(why) + length) },
            _ => throw new ArgumentException("Waste needs a cause.", nameof(cause)),
        };

    /// <summary>The tally of a strip, each of its frames counted once.</summary>
    public static Tally Of(Strip strip) => Of(strip.Segments);

    /// <summary>The tally of some segments.</summary>
    public static Tally Of(IEnumerable<Segment> segments) =>
        segments.Aggregate(Empty, (sum, segment) => sum.With(segment.Account, segment.Cause, segment.Span.Length));

    /// <summary>Two tallies added, account by account.</summary>
    public static Tally operator +(Tally a, Tally b)
    {
        var sum = a with
        {
            Good = a.Good + b.Good,
            Hold = a.Hold + b.Hold,
            NoGood = a.NoGood + b.NoGood,
            ShortEnd = a.ShortEnd + b.ShortEnd,
        };
        return b.Wasted.Aggregate(sum, (into, part) => into.With(Account.Waste, part.Key, part.Value));
    }

    /// <summary>Whether both have the same film in every account. Record equality would compare the dictionary by reference.</summary>
    public bool Equals(Tally? other) =>
        other is not null
        && (Good, Hold, NoGood, ShortEnd) == (other.Good, other.Hold, other.NoGood, other.ShortEnd)
        && Wasted.SequenceEqual(other.Wasted);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Good, Hold, NoGood, ShortEnd, Waste);
}
