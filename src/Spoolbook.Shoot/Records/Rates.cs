using System.Collections.Immutable;

namespace Spoolbook.Shoot.Records;

/// <summary>Prices, in one currency. A missing rate leaves the cost open.</summary>
public sealed record Rates(Place Place)
{
    /// <summary>The currency's code, <c>EUR</c>.</summary>
    public required Located<string> Currency { get; init; }

    /// <summary>Prices of processing, by process.</summary>
    public ImmutableArray<ProcessRate> Processes { get; init; } = [];

    /// <summary>What a process's minimum is charged for; a roll unless written.</summary>
    public Located<MinimumPer>? MinimumPer { get; init; }

    /// <summary>Surcharge for a roll pushed or pulled, for each stop or part of a stop.</summary>
    public Located<PushRate>? PushPerStop { get; init; }

    /// <summary>Preparing one roll.</summary>
    public Located<decimal>? PrepPerRoll { get; init; }

    /// <summary>Scanning a foot or a metre.</summary>
    public LengthRate? Scan { get; init; }

    /// <summary>Scanning an hour of film at the projection speed; <see cref="Scan"/> comes before it.</summary>
    public Located<decimal>? ScanPerHour { get; init; }

    /// <summary>A workprint, a foot or a metre.</summary>
    public LengthRate? Workprint { get; init; }

    /// <summary>Sending one box.</summary>
    public Located<decimal>? Shipping { get; init; }

    /// <summary>Tax as a fraction: 0.19 for 19 %.</summary>
    public Located<decimal>? Tax { get; init; }
}
