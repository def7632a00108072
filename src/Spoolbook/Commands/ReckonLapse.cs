using System.CommandLine;
using Spoolbook.Film;
using Spoolbook.Film.Reckonings;

namespace Spoolbook.Commands;

/// <summary><c>reckon lapse</c>: a time-lapse from any two of its figures.</summary>
internal static class ReckonLapse
{
    public static (Command Command, Func<ParseResult, ReckonAnswer> Reckon) Build()
    {
        var happening = ReckonOptions.Written("--event", "How long it takes before the camera: 3h, 90min.", Measure.Seconds);
        var screen = ReckonOptions.Written("--screen", "How long it is to last on the screen: 30s.", Measure.Seconds);
        var interval = ReckonOptions.Written("--interval", "From one exposure to the next: 12s.", Measure.Seconds);
        var frames = ReckonOptions.Written("--frames", "Frames to expose: 900.", Measure.Number, WholeFrames);
        var projected = ReckonOptions.Speed("--projected-at", "The speed on the screen; 24 unless given.");
        var transport = ReckonOptions.Written("--transport", "What the camera takes to move the film; 1/8s unless given.", Measure.Seconds);
        var gauge = ReckonOptions.Gauge("--gauge", "The gauge; 16mm unless given.");
        var units = ReckonOptions.Units();
        var command = new Command("lapse", "A time-lapse, from two of: the event, the interval, and the frames or the screen time.")
        {
            happening,
            screen,
            interval,
            frames,
            projected,
            transport,
            gauge,
            units,
        };
        return (command, Reckon);

        ReckonAnswer Reckon(ParseResult parsed)
        {
            var shown = parsed.GetValue(projected) ?? Speed.Normal;
            Footage? count = parsed.GetValue(frames) is { } number ? new Footage((long)number.Numerator) : null;
            var solved = TimeLapse.Solve(shown, parsed.GetValue(interval), parsed.GetValue(happening), count, parsed.GetValue(screen));
            return solved.TryGet(out var lapse)
                ? ReckonAnswer.Of(
                    LapseReckoning.Of(
                        lapse,
                        parsed.GetValue(gauge) ?? Gauge.Default,
                        shown,
                        parsed.GetValue(transport) ?? TimeLapse.UsualTransport,
                        parsed.GetValue(units)
                    )
                )
                : ReckonAnswer.Not(solved.Slip!);
        }
    }

    static string? WholeFrames(Ratio frames) => frames.IsWhole ? null : "frames are whole: write 900";
}
