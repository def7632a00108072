using System.Collections.Immutable;

namespace Spoolbook.Film.Exposures;

/// <summary>
/// What changes the light between the meter and the film. The meter's stop is for the normal speed, the reference
/// shutter fully open, no finder, filter or extension, and the film's own index. A null or empty property changes
/// nothing.
/// </summary>
public sealed record ExposureConditions
{
    /// <summary>The camera speed.</summary>
    public Speed? Speed { get; init; }

    /// <summary>The speed that the meter's stop is for.</summary>
    public Speed ReferenceSpeed { get; init; } = Film.Speed.Normal;

    /// <summary>The shutter's full opening.</summary>
    public Shutter? Shutter { get; init; }

    /// <summary>The shutter opening that the meter's stop is for.</summary>
    public Shutter ReferenceShutter { get; init; } = Film.Shutter.Half;

    /// <summary>Where the variable shutter is set. Its counted stops are used, not the exact ones.</summary>
    public ShutterOpening? Opening { get; init; }

    /// <summary>How long the shutter is held open for a timed exposure. Speed, shutter and opening are then ignored.</summary>
    public ExposureTime? Timed { get; init; }

    /// <summary>The part of the light that a reflex finder takes, from 0 to below 1 (20 to 25 %, common practice).</summary>
    public Ratio? FinderLoss { get; init; }

    /// <summary>Neutral densities in front of the film, each 0 or more, by the exact logarithm.</summary>
    public ImmutableArray<double> Densities { get; init; } = [];

    /// <summary>Filters with tabled stops.</summary>
    public ImmutableArray<LightFilter> Filters { get; init; } = [];

    /// <summary>Filters known only by a factor, each above 0.</summary>
    public ImmutableArray<double> FilterFactors { get; init; } = [];

    /// <summary>The extension of a bellows or a close focus beyond infinity, with the focal length of the lens.</summary>
    public LensExtension? Extension { get; init; }

    /// <summary>How light the subject is. Matters only for incident light.</summary>
    public SubjectTone Subject { get; init; }

    /// <summary>The stock's corrections at long and short times; unused without an <see cref="ExposureTime"/>.</summary>
    public IReciprocity? Reciprocity { get; init; }

    /// <summary>Stops of push (positive) or pull (negative) ordered from the lab.</summary>
    public double Push { get; init; }

    /// <summary>The index the film is rated at, and the one on its can.</summary>
    public FilmRating? Rating { get; init; }
}
