using System.Collections.Immutable;

namespace Spoolbook.Film.Exposures;

/// <summary>What an exposure card needs of a camera body.</summary>
public sealed record ExposureCardBody
{
    /// <summary>The engraved speeds, in any order.</summary>
    public required ImmutableArray<Speed> Speeds { get; init; }

    /// <summary>The shutter's full opening.</summary>
    public required Shutter Shutter { get; init; }

    /// <summary>The part of the light that goes to the finder; 0 without a reflex finder.</summary>
    public Ratio FinderLoss { get; init; }

    /// <summary>The spring; null where only a motor drives the body.</summary>
    public SpringMotor? Spring { get; init; }

    /// <summary>The gauge that it loads.</summary>
    public Gauge Gauge { get; init; } = Gauge.Default;

    /// <summary>The projection speed.</summary>
    public Speed Projection { get; init; } = Speed.Normal;

    /// <summary>
    /// The speed that the card counts from: the projection speed where it is engraved, else the engraved one nearest to
    /// it, by ratio.
    /// </summary>
    public Speed Counted =>
        Speeds.IsDefaultOrEmpty
            ? Projection
            : Speeds.MinBy(s =>
                (Math.Abs(Math.Log2(s.FramesPerSecond.ToDouble() / Projection.FramesPerSecond.ToDouble())), s.FramesPerSecond.ToDouble())
            );
}
