using System.Collections.Immutable;

namespace Spoolbook.Film.Exposures;

/// <summary>A camera body, as far as exposure goes.</summary>
public sealed record ExposureCardBody
{
    /// <summary>The speeds engraved on the body, in any order.</summary>
    public required ImmutableArray<Speed> Speeds { get; init; }

    /// <summary>The full opening of its shutter.</summary>
    public required Shutter Shutter { get; init; }

    /// <summary>The part of the light that its finder takes; 0 without a reflex finder.</summary>
    public Ratio FinderLoss { get; init; }

    /// <summary>Its spring; null for a body that only a motor drives.</summary>
    public SpringMotor? Spring { get; init; }

    /// <summary>The gauge that it takes.</summary>
    public Gauge Gauge { get; init; } = Gauge.Default;

    /// <summary>The speed that the film will be projected at.</summary>
    public Speed Projection { get; init; } = Speed.Normal;
}
