using System.Collections.Immutable;
using Spoolbook.Film;

namespace Spoolbook.Shoot.Records;

/// <summary>A day, and the time of day where somebody wrote it down.</summary>
/// <param name="Day">The day.</param>
/// <param name="Time">The time; null where only the day is known.</param>
public readonly record struct StockTime(DateOnly Day, TimeOnly? Time)
{
    /// <summary>The first moment that it can mean.</summary>
    public DateTime Earliest => Day.ToDateTime(Time ?? TimeOnly.MinValue);

    /// <summary>The last moment that it can mean.</summary>
    public DateTime Latest => Day.ToDateTime(Time ?? TimeOnly.MaxValue);
}

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

    /// <summary>The moment that it is put at among loads: the start of a day without a time for what came and what was taken out of the cold, else its end.</summary>
    public virtual DateTime At => On.Value.Latest;
}

/// <summary>Units that came after the first delivery, or came back.</summary>
public sealed record StockCame(Place Place) : StockEntry(Place)
{
    /// <summary>Who gave it: another production, a store.</summary>
    public Located<string>? From { get; init; }

    /// <summary>Price paid for each; the lot's unless written, and nothing for what was sent away from here and comes back.</summary>
    public Located<decimal>? Price { get; init; }

    /// <inheritdoc/>
    public override string Word => "came";

    /// <inheritdoc/>
    public override DateTime At => On.Value.Earliest;
}

/// <summary>Units or a short end given to another production or back to a store.</summary>
public sealed record StockSentAway(Place Place) : StockEntry(Place)
{
    /// <summary>Who got it.</summary>
    public Located<string>? To { get; init; }

    /// <summary>Price that was paid for each; null where nothing was agreed.</summary>
    public Located<decimal>? Price { get; init; }

    /// <inheritdoc/>
    public override string Word => "sent-away";
}

/// <summary>Units or a short end that nobody can find.</summary>
public sealed record StockLost(Place Place) : StockEntry(Place)
{
    /// <inheritdoc/>
    public override string Word => "lost";
}

/// <summary>Units or a short end that cannot be used any more: opened in the light, wet, left in the sun.</summary>
public sealed record StockDamaged(Place Place) : StockEntry(Place)
{
    /// <inheritdoc/>
    public override string Word => "damaged";
}

/// <summary>A unit or a short end that was opened or loaded, and canned again unexposed; a re-can.</summary>
public sealed record StockRecanned(Place Place) : StockEntry(Place)
{
    /// <summary>The end that was thrown away because it had seen light; null where none was.</summary>
    public Located<Footage>? Off { get; init; }

    /// <inheritdoc/>
    public override string Word => "recanned";
}

/// <summary>Stock taken out of the cold to warm up before it is opened.</summary>
public sealed record StockOutOfCold(Place Place) : StockEntry(Place)
{
    /// <summary>Out of what; a fridge unless written.</summary>
    public Located<ColdStore>? From { get; init; }

    /// <inheritdoc/>
    public override string Word => "out-of-cold";

    /// <inheritdoc/>
    public override DateTime At => On.Value.Earliest;
}

/// <summary>Stock put back into the cold.</summary>
public sealed record StockIntoCold(Place Place) : StockEntry(Place)
{
    /// <inheritdoc/>
    public override string Word => "into-cold";
}

/// <summary>Stock that went through an X-ray machine, exposed or not.</summary>
public sealed record StockXRayed(Place Place) : StockEntry(Place)
{
    /// <summary>How many times; once unless written.</summary>
    public Located<int>? Passes { get; init; }

    /// <inheritdoc/>
    public override string Word => "x-rayed";
}
