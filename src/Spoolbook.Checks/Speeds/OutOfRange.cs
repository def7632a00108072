using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Speeds;

static class OutOfRange
{
    public static readonly RecordCheck Check = new("speed/out-of-range", Level.Error, Look);

    // Only where a speed is written: the takes that keep it are wrong because of it.
    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        from shot in context.TakesWithBodies(roll)
        let finding = shot is { Body: { } body, Take.SpeedWritten: { } speed } ? Outside(roll, shot.Take, speed, body) : null
        where finding is not null
        select finding;

    static Finding? Outside(Roll roll, Take take, Located<Speed> speed, Body body)
    {
        var slowest = (body.Slowest ?? body.Speeds.MinBy(s => s.Value.FramesPerSecond))?.Value;
        var fastest = (body.Fastest ?? body.Speeds.MaxBy(s => s.Value.FramesPerSecond))?.Value;
        var tooSlow = slowest is { } low && speed.Value.FramesPerSecond < low.FramesPerSecond;
        var tooFast = fastest is { } high && speed.Value.FramesPerSecond > high.FramesPerSecond;
        if (!tooSlow && !tooFast)
        {
            return null;
        }

        var limit = tooSlow ? $"no slower than {slowest}" : $"no faster than {fastest}";
        return Check.At(roll, take, speed.Place, $"Take {take.Slate} is written at {speed.Value} frames a second, and body {body.Name.Value} runs {limit}") with
        {
            Others = [new Related((tooSlow ? body.Slowest : body.Fastest)?.Place ?? body.Name.Place, "what the body can do")],
            Figures = [new Figure("written", speed.Value.ToString()), new Figure("slowest", $"{slowest}"), new Figure("fastest", $"{fastest}")],
            Help = "Correct the speed; for single-frame and time-lapse work write `single-frame:` or `interval:` instead of a slow speed.",
        };
    }
}
