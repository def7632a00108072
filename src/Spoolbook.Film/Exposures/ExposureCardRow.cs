namespace Spoolbook.Film.Exposures;

/// <summary>A camera at one of its speeds.</summary>
/// <param name="Speed">As engraved.</param>
/// <param name="Marked">The time the shutter gives.</param>
/// <param name="Adapted">The time to meter for, less what the finder takes.</param>
/// <param name="StopsFromNormal">Light gained over the speed that the card counts from, with the same shutter.</param>
/// <param name="FeetPerMinute">By the gauge's nominal count.</param>
/// <param name="SecondsOnFullWind">How long a full wind runs, in seconds; null without a spring.</param>
/// <param name="ApparentSpeed">How fast the subject looks at the projection speed: 2 is twice as fast.</param>
public sealed record ExposureCardRow(
    Speed Speed,
    ExposureTime Marked,
    ExposureTime Adapted,
    double StopsFromNormal,
    Ratio FeetPerMinute,
    Ratio? SecondsOnFullWind,
    Ratio ApparentSpeed
);
