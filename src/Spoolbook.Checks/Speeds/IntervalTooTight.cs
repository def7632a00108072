using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Speeds;

static class IntervalTooTight
{
    public static readonly RecordCheck Check = new("speed/interval-too-tight", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice
        from take in roll.Takes
        where take.Interval is { Value.Sign: > 0 }
        let transport = context.Of(Tolerances.TransportTime)
        let open = take.Timed?.Value ?? Ratio.Zero
        let every = take.Interval!.Value
        where open + transport > every
        let interval = Seconds(every)
        select Check.At(roll, take, take.Interval!.Place, take.Timed is null
            ? $"Take {take.Slate} exposes a frame every {interval}, and the camera takes {Seconds(transport)} to move the film"
            : $"Take {take.Slate} exposes a frame every {interval} and holds each open for {Seconds(open)}: there is no time left to move the film") with
        {
            Others = take.Timed is { } timed ? [new(timed.Place, "held open")] : [],
            Figures = [new("interval", interval), new("held open", Seconds(open)), new("to move the film", Seconds(transport))],
            Help = $"Frames are skipped or cut short. Make the interval {Seconds(open + transport)} at least, or the time shorter; if it was so, correct what is written.",
        };

    static string Seconds(Ratio seconds) => seconds.ToShortText(3) + " s";
}
