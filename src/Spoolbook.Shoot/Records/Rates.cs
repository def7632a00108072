using System.Collections.Immutable;

namespace Spoolbook.Shoot.Records;

/// <summary>What things cost, in one currency; a rate that is not written leaves the cost open.</summary>
public sealed record Rates(Place Place)
{
    /// <summary>The currency's code, <c>EUR</c>.</summary>
    public required Located<string> Currency { get; init; }

    /// <summary>Prices of processing, by process.</summary>
    public ImmutableArray<ProcessRate> Processes { get; init; } = [];

    /// <summary>Surcharge for a roll pushed or pulled, for each stop or part of one.</summary>
    public Located<decimal>? PushPerStop { get; init; }

    /// <summary>Preparing one roll.</summary>
    public Located<decimal>? PrepPerRoll { get; init; }

    /// <summary>Scanning a foot or a metre.</summary>
    public LengthRate? Scan { get; init; }

    /// <summary>Scanning an hour of film, as it runs at the projection speed; where both are written, <see cref="Scan"/> holds.</summary>
    public Located<decimal>? ScanPerHour { get; init; }

    /// <summary>A workprint, a foot or a metre.</summary>
    public LengthRate? Workprint { get; init; }

    /// <summary>Sending one box.</summary>
    public Located<decimal>? Shipping { get; init; }

    /// <summary>Tax as a fraction: 0.19 for 19 %.</summary>
    public Located<decimal>? Tax { get; init; }
}
