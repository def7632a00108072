namespace Spoolbook.Film;

/// <summary>
/// A time-lapse, worked out: event = interval × frames, and screen time = frames / projection speed
/// (3 h in 30 s at 30 frames a second is an interval of 12 s; J. Carucci, filming guide).
/// </summary>
/// <param name="Interval">Seconds from one exposure to the next.</param>
/// <param name="Event">Seconds that the event takes: interval × frames.</param>
/// <param name="Frames">Frames exposed.</param>
/// <param name="ScreenTime">Seconds on the screen.</param>
public readonly record struct TimeLapse(Ratio Interval, Ratio Event, Footage Frames, Ratio ScreenTime)
{
    /// <summary>
    /// Seconds a camera takes to move the film for a single frame, where the body's own time is unknown: a whole turn at 8
    /// frames a second, the usual speed for single frames (common practice).
    /// </summary>
    public static readonly Ratio UsualTransport = new(1, 8);

    /// <summary>
    /// Works out the rest from any two of interval, event and length, the length in frames or as screen time. Where the
    /// event ends between two exposures, the rest of the interval is dropped.
    /// </summary>
    public static Parsed<TimeLapse, TimeLapseFault> Solve(
        Speed projection,
        Ratio? interval = null,
        Ratio? @event = null,
        Footage? frames = null,
        Ratio? screenTime = null
    )
    {
        var length = frames ?? (screenTime is { } seconds ? Footage.RunningFor(seconds, projection) : null);
        if (interval?.Sign <= 0 || @event?.Sign <= 0 || length <= Footage.Zero || screenTime?.Sign <= 0)
        {
            return Failed(TimeLapseFault.NotAboveZero);
        }

        if (frames is not null && screenTime is { } screen && Footage.RunningFor(screen, projection) != frames)
        {
            return Failed(TimeLapseFault.FramesAgainstTime);
        }

        return (interval, @event, length) switch
        {
            ({ } i, { } e, { } n) when i * n.Frames != e => Failed(TimeLapseFault.IntervalsAgainstEvent),
            ({ } i, _, { } n) => Of(i, n, projection),
            (_, { } e, { } n) => Of(e / n.Frames, n, projection),
            ({ } i, { } e, _) when e >= i => Of(i, new Footage((long)(e / i).Floor()), projection),
            ({ }, { }, _) => Failed(TimeLapseFault.EventBeforeInterval),
            _ => Failed(TimeLapseFault.TooLittleKnown),
        };
    }

    /// <summary>
    /// The longest exposure that fits the interval: what is left once the camera has moved the film. Null where that takes
    /// the whole interval.
    /// </summary>
    /// <param name="transport">Seconds the camera takes to move the film and settle.</param>
    public ExposureTime? LongestExposure(Ratio transport) => transport < Interval ? new ExposureTime(Interval - transport) : null;

    /// <summary>How many times faster than life the subject looks: event over screen time.</summary>
    public Ratio ApparentSpeed => Event / ScreenTime;

    static TimeLapse Of(Ratio interval, Footage frames, Speed projection) =>
        new(interval, interval * frames.Frames, frames, frames.Seconds(projection));

    static Parsed<TimeLapse, TimeLapseFault> Failed(TimeLapseFault fault) => new(fault, "");
}
