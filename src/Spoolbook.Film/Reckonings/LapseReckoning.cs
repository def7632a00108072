using System.Globalization;

namespace Spoolbook.Film.Reckonings;

/// <summary>A time-lapse, worked out.</summary>
public static class LapseReckoning
{
    /// <summary>Interval, frames, film and screen time.</summary>
    /// <param name="lapse">Solved by <see cref="TimeLapse.Solve"/>.</param>
    /// <param name="gauge">For the length of film.</param>
    /// <param name="projection">The projection speed.</param>
    /// <param name="transport">Seconds that the camera takes to move the film, for the longest exposure.</param>
    /// <param name="units">For the length of film.</param>
    public static Reckoning Of(TimeLapse lapse, Gauge gauge, Speed projection, Ratio transport, ReckoningUnits units) =>
        new(
            "Time-lapse",
            [
                ReckoningLine.Of("interval", lapse.Interval, 3, "s"),
                ReckoningLine.Of("frames", new Ratio(lapse.Frames.Frames, 1), 0, "fr"),
                ReckoningText.Film("film", lapse.Frames, gauge, units),
                ReckoningLine.Of("on the screen", lapse.ScreenTime, 2, $"s at {projection}"),
                ReckoningLine.Of("looks", lapse.ApparentSpeed, 1, "times as fast"),
                Longest(lapse, transport),
            ],
            [
                ReckoningLine.Of("event", lapse.Event, 2, "s"),
                ReckoningLine.Of("event / frames", lapse.Event / lapse.Frames.Frames, 3, "s"),
                ReckoningLine.Of("to move the film", transport, 3, "s"),
            ]
        );

    static ReckoningLine Longest(TimeLapse lapse, Ratio transport) =>
        lapse.LongestExposure(transport) is { } longest
            ? new("longest exposure", Longest(longest), "s", longest.Seconds.ToDouble())
            : ReckoningLine.Of("longest exposure", "the camera is slower than the interval");

    // A fraction up to half a second, and never longer than there is time for.
    static string Longest(ExposureTime time) =>
        time.Denominator > 2
            ? string.Create(CultureInfo.InvariantCulture, $"1/{Math.Ceiling(time.Denominator.ToDouble())}")
            : time.Seconds.ToShortText(3);
}
