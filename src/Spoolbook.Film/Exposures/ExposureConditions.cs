using System.Collections.Immutable;

namespace Spoolbook.Film.Exposures;

/// <summary>
/// What lies between a meter's answer and the film. The meter is taken to have answered for the normal speed
/// and the reference shutter, an open one without finder, filter or extension, and for the film's own index.
/// Whatever is left null or empty changes nothing.
/// </summary>
public sealed record ExposureConditions
{
    /// <summary>The camera speed.</summary>
    public Speed? Speed { get; init; }

    /// <summary>The speed that the meter answered for.</summary>
    public Speed ReferenceSpeed { get; init; } = Film.Speed.Normal;

    /// <summary>The shutter's full opening.</summary>
    public Shutter? Shutter { get; init; }

    /// <summary>The opening that the meter answered for.</summary>
    public Shutter ReferenceShutter { get; init; } = Film.Shutter.Half;

    /// <summary>Where the variable shutter is set; its counted stops are taken.</summary>
    public ShutterOpening? Opening { get; init; }

    /// <summary>
    /// How long the shutter was held open for a timed exposure; speed, shutter and opening then say nothing.
    /// </summary>
    public ExposureTime? Timed { get; init; }

    /// <summary>The part of the light that a reflex finder takes, from 0 to below 1 (20 to 25 %, common practice).</summary>
    public Ratio? FinderLoss { get; init; }

    /// <summary>Neutral densities in the light's way, each 0 or more, taken by the exact logarithm.</summary>
    public ImmutableArray<double> Densities { get; init; } = [];

    /// <summary>Filters whose stops are tabled.</summary>
    public ImmutableArray<LightFilter> Filters { get; init; } = [];

    /// <summary>Filters of which only a factor is known, each above 0.</summary>
    public ImmutableArray<double> FilterFactors { get; init; } = [];

    /// <summary>The extension of a bellows or a close focus beyond infinity, with the focal length it is on.</summary>
    public LensExtension? Extension { get; init; }

    /// <summary>How light the subject is, where only the light that falls on it was measured.</summary>
    public SubjectTone Subject { get; init; }

    /// <summary>How the stock fails at long and short times; nothing without <see cref="ExposureTime"/>.</summary>
    public ReciprocityTable? Reciprocity { get; init; }

    /// <summary>Stops of push (positive) or pull (negative) that the lab was asked for.</summary>
    public double Push { get; init; }

    /// <summary>The index the film is rated at, and the one on its can.</summary>
    public FilmRating? Rating { get; init; }
}
