using Spoolbook.Film.Exposures;

namespace Spoolbook.Film.Reckonings;

/// <summary>
/// What the crew knows of an exposure. Only the first kind of light given counts, in this order: stop, incident,
/// reflected, daylight.
/// </summary>
public sealed record ExposureQuestion
{
    /// <summary>Camera, finder, filters and film.</summary>
    public ExposureConditions Conditions { get; init; } = new();

    /// <summary>The exposure index of the film, above 0; needed where light was metered.</summary>
    public double Index { get; init; } = 100;

    /// <summary>The stop that the meter gave for the reference speed and shutter.</summary>
    public Stop? Metered { get; init; }

    /// <summary>Light on the subject, in lux.</summary>
    public double? IncidentLux { get; init; }

    /// <summary>Light from the subject, in candelas a square metre.</summary>
    public double? ReflectedCandelas { get; init; }

    /// <summary>Daylight, judged by eye.</summary>
    public DaylightKind? Daylight { get; init; }

    /// <summary>The incident constant in lux seconds; 25 footcandle seconds by default, as in motion picture tables.</summary>
    public double C { get; init; } = MeterConstants.CCine;

    /// <summary>The reflected constant in candela seconds a square metre.</summary>
    public double K { get; init; } = MeterConstants.K;
}
