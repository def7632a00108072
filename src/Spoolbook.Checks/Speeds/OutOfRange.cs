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

        var limit = (tooSlow ? slowest : fastest)!.Value;
        return Check.At(
            roll,
            take,
            speed.Place,
            Sentence.Of(
                tooSlow ? "speed/out-of-range.message.slow" : "speed/out-of-range.message.fast",
                ("take", take.Slate),
                ("speed", speed.Value.ToString()),
                ("body", body.Name.Value),
                ("limit", limit.ToString())
            )
        ) with
        {
            Others =
            [
                new Related(
                    (tooSlow ? body.Slowest : body.Fastest)?.Place ?? body.Name.Place,
                    Sentence.Of("speed/out-of-range.other.what-the-body-can-do")
                ),
            ],
            Figures =
            [
                new Figure(Sentence.Of("speed/out-of-range.figure.written"), speed.Value.ToString()),
                new Figure(Sentence.Of("speed/out-of-range.figure.slowest"), $"{slowest}"),
                new Figure(Sentence.Of("speed/out-of-range.figure.fastest"), $"{fastest}"),
            ],
            Advice = Sentence.Of("speed/out-of-range.help"),
        };
    }
}
