using System.Collections.Immutable;

namespace Spoolbook.Film.Exposures;

/// <summary>The numbers of a body's exposure card, unrounded.</summary>
public static class ExposureCard
{
    /// <summary>A row for each engraved speed, slowest first.</summary>
    public static ImmutableArray<ExposureCardRow> Rows(ExposureCardBody body) =>
        [.. body.Speeds.Distinct().Order().Select(speed => Row(body, speed))];

    /// <summary>The exposure at each mark of the variable shutter at <see cref="ExposureCardBody.Counted"/>, in the order given.</summary>
    public static ImmutableArray<ExposureCardMark> Marks(ExposureCardBody body, IEnumerable<ShutterOpening> openings)
    {
        var whole = ExposureTime.Of(body.Shutter, body.Counted);
        return
        [
            .. openings.Select(opening => new ExposureCardMark(opening, whole.At(opening), whole.At(opening)?.Adapted(body.FinderLoss))),
        ];
    }

    /// <summary>The stop for each kind of daylight at a stock's index and a speed, with the time adapted for the finder.</summary>
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
            marked.StopsOver(ExposureTime.Of(body.Shutter, body.Counted)),
            RunningTime.FeetPerMinute(speed, body.Gauge),
            body.Spring?.SecondsAt(speed),
            RunningTime.ApparentSpeed(speed, body.Projection)
        );
    }
}
