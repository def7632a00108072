using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Speeds;

static class FlickerRisk
{
    public static readonly RecordCheck Check = new("speed/flicker-risk", Level.Warning, Look);

    sealed record Fault(int Mains, Speed Speed, ExposureTime Time);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice
        let bodies = context
            .TakesWithBodies(roll)
            .ToDictionary<(Take Take, Body? Body), object, Body?>(t => t.Take, t => t.Body, ReferenceEqualityComparer.Instance)
        from run in Runs.Of(roll.Takes.Where(t => t.Mark.Value != Mark.Test), take => FaultOf(context, take, bodies[take]))
        select Find(context, roll, run);

    // Single frames do not beat with the mains.
    static Fault? FaultOf(Context context, Take take, Body? body)
    {
        if (
            context.Production.LampsOf(take) is not { Value: var mains }
            || take is not { SingleFrames: null, Interval: null, Timed: null }
            || TimeOf(take, body) is not { } time
        )
        {
            return null;
        }

        var turn = new ExposureTime(1 / take.Speed.FramesPerSecond);
        return IsWhole(context, turn, mains) || IsWhole(context, time, mains) ? null : new Fault(mains, take.Speed, time);
    }

    // Null where it is unknown, and for black.
    static ExposureTime? TimeOf(Take take, Body? body) =>
        body?.ShutterAngle is { Value: var full } && take.OpeningIn(body) is { IsBlack: false, OpenFraction: var part }
            ? ExposureTime.Of(new Shutter(full * part), take.Speed)
            : null;

    static bool IsWhole(Context context, ExposureTime time, int mains)
    {
        var pulses = Flicker.HalfCycles(time, mains);
        var whole = pulses.Round();
        return whole > 0 && Math.Abs((pulses / new Ratio(whole, 1)).ToDouble() - 1) <= context.Of(Tolerances.FlickerSlack).ToDouble();
    }

    static Finding Find(Context context, Roll roll, Run<Fault> run)
    {
        var (take, (mains, speed, time)) = (run.First, run.Fault);
        var shutter = Flicker
            .SafeShutters(speed, mains)
            .MinBy(s => Math.Abs((ExposureTime.Of(s, speed).Seconds - time.Seconds).ToDouble()));
        var safe = Flicker
            .SafeSpeeds(mains, new Speed(speed.FramesPerSecond / 2))
            .MinBy(s => Math.Abs((s.FramesPerSecond - speed.FramesPerSecond).ToDouble()));
        return Check.At(
            roll,
            take,
            (take.SpeedWritten?.Place ?? take.Number.Place),
            Sentence.Of(
                run.IsOne ? "speed/flicker-risk.message.one" : "speed/flicker-risk.message.many",
                ("takes", run.Slates),
                ("mains", mains),
                ("speed", speed.ToString()),
                ("time", time.ToString())
            )
        ) with
        {
            Others = [new(context.Production.LampsOf(take)!.Place, Sentence.Of("speed/flicker-risk.other.the-lamps"))],
            Figures =
            [
                new(Sentence.Of("speed/flicker-risk.figure.pulses-of-the-light-a-second"), Context.Number(2 * mains)),
                new(Sentence.Of("speed/flicker-risk.figure.pulses-in-one-frame"), Flicker.HalfCycles(time, mains).ToShortText(2)),
                new(
                    Sentence.Of("speed/flicker-risk.figure.safe-at-this-speed"),
                    Sentence.Of("speed/flicker-risk.value.shutter", ("shutter", shutter.ToString()))
                ),
                new(Sentence.Of("speed/flicker-risk.figure.safe-with-any-shutter"), Context.Speed(safe)),
            ],
            Advice = Sentence.Of("speed/flicker-risk.help"),
        };
    }
}
