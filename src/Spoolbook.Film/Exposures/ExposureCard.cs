using System.Collections.Immutable;

namespace Spoolbook.Film.Exposures;

/// <summary>What a camera does at one of its speeds.</summary>
/// <param name="Speed">As engraved.</param>
/// <param name="Marked">The time that the shutter gives.</param>
/// <param name="Adapted">The time to meter for, less what the finder takes.</param>
/// <param name="StopsFromNormal">Light gained over 24 frames a second with the same shutter.</param>
/// <param name="FeetPerMinute">By the gauge's nominal count.</param>
/// <param name="SecondsOnFullWind">What the spring gives; null for a body without one.</param>
/// <param name="ApparentSpeed">How fast the subject looks at the projection speed: 2 is twice as fast.</param>
public sealed record ExposureCardRow(
    Speed Speed,
    ExposureTime Marked,
    ExposureTime Adapted,
    double StopsFromNormal,
    Ratio FeetPerMinute,
    Ratio? SecondsOnFullWind,
    Ratio ApparentSpeed);

/// <summary>What a mark of the variable shutter does at the normal speed.</summary>
/// <param name="Opening">The mark.</param>
/// <param name="Marked">The time at 24 frames a second; null where it is black.</param>
/// <param name="Adapted">The time to meter for; null where it is black.</param>
public sealed record ExposureCardMark(ShutterOpening Opening, ExposureTime? Marked, ExposureTime? Adapted);

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

/// <summary>The numbers of the exposure card of a body, before anything is written or rounded.</summary>
public static class ExposureCard
{
    /// <summary>A row for each engraved speed, slowest first.</summary>
    public static ImmutableArray<ExposureCardRow> Rows(ExposureCardBody body) =>
        [.. body.Speeds.Distinct().Order().Select(speed => Row(body, speed))];

    /// <summary>What each mark of the variable shutter does at 24 frames a second, in the order given.</summary>
    public static ImmutableArray<ExposureCardMark> Marks(ExposureCardBody body, IEnumerable<ShutterOpening> openings)
    {
        var whole = ExposureTime.Of(body.Shutter, Speed.Normal);
        return [.. openings.Select(opening => new ExposureCardMark(opening, whole.At(opening), whole.At(opening)?.Adapted(body.FinderLoss)))];
    }

    /// <summary>The stop for each kind of daylight at a stock's index and a speed, at the time adapted for the finder.</summary>
    public static ImmutableArray<(DaylightKind Kind, Stop Stop)> SunnyDay(ExposureCardBody body, double index, Speed speed)
    {
        var time = ExposureTime.Of(body.Shutter, speed).Adapted(body.FinderLoss);
        return [.. Enum.GetValues<DaylightKind>().Select(kind => (kind, Daylight.StopFor(kind, index, time)))];
    }

    static ExposureCardRow Row(ExposureCardBody body, Speed speed)
    {
        var marked = ExposureTime.Of(body.Shutter, speed);
        return new ExposureCardRow(
            speed,
            marked,
            marked.Adapted(body.FinderLoss),
            marked.StopsOver(ExposureTime.Of(body.Shutter, Speed.Normal)),
            RunningTime.FeetPerMinute(speed, body.Gauge),
            body.Spring?.SecondsAt(speed),
            RunningTime.ApparentSpeed(speed, body.Projection));
    }
}
