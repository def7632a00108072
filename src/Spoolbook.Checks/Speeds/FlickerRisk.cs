using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Speeds;

static class FlickerRisk
{
    public static readonly RecordCheck Check = new("speed/flicker-risk", Level.Warning, Look);

    /// <param name="Held">Whether a motor held the speed.</param>
    sealed record Fault(int Mains, Speed Speed, ExposureTime Time, bool Held);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice
        let bodies = context
            .TakesWithBodies(roll)
            .ToDictionary<(Take Take, Body? Body), object, Body?>(t => t.Take, t => t.Body, ReferenceEqualityComparer.Instance)
        from run in Runs.Of(roll.Takes.Where(t => t.Mark.Value != Mark.Test), take => FaultOf(context, take, bodies[take]))
        select Find(context, roll, bodies[run.First], run);

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
        var held = IsHeld(context, take);
        return held && (IsWhole(context, turn, mains) || IsWhole(context, time, mains)) ? null : new Fault(mains, take.Speed, time, held);
    }

    // A spring runs slower as it runs down, and a hand never alike. A motor that is not said to be wild is trusted.
    static bool IsHeld(Context context, Take take) =>
        take.HandCranked?.Value != true && take.Motor is { } motor && context.Production.MotorNamed(motor.Value)?.Sync?.Value != false;

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

    static Finding Find(Context context, Roll roll, Body? body, Run<Fault> run)
    {
        var (take, (mains, speed, time, held)) = (run.First, run.Fault);
        var shutter = Openings(body)
            .Where(s => IsWhole(context, ExposureTime.Of(s, speed), mains))
            .OrderBy(s => Math.Abs((ExposureTime.Of(s, speed).Seconds - time.Seconds).ToDouble()))
            .Select(s => (Shutter?)s)
            .FirstOrDefault();
        var safe = Flicker
            .SafeSpeeds(mains, new Speed(speed.FramesPerSecond / 2))
            .Where(s => CanRun(body, s))
            .OrderBy(s => Math.Abs((s.FramesPerSecond - speed.FramesPerSecond).ToDouble()))
            .Select(s => (Speed?)s)
            .FirstOrDefault();
        return Check.At(
            roll,
            take,
            (take.SpeedWritten?.Place ?? take.Number.Place),
            Sentence.Of(
                (run.IsOne, held) switch
                {
                    (true, true) => "speed/flicker-risk.message.one",
                    (false, true) => "speed/flicker-risk.message.many",
                    (true, false) => "speed/flicker-risk.message.one-not-held",
                    (false, false) => "speed/flicker-risk.message.many-not-held",
                },
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
                .. shutter is { } opening
                    ?
                    [
                        new Figure(
                            Sentence.Of("speed/flicker-risk.figure.safe-at-this-speed"),
                            Sentence.Of("speed/flicker-risk.value.shutter", ("shutter", opening.ToString()))
                        ),
                    ]
                    : Array.Empty<Figure>(),
                .. safe is { } even
                    ? [new Figure(Sentence.Of("speed/flicker-risk.figure.safe-with-any-shutter"), Context.Speed(even))]
                    : Array.Empty<Figure>(),
            ],
            Advice = Sentence.Of(held ? "speed/flicker-risk.help" : "speed/flicker-risk.help.not-held"),
        };
    }

    // The openings that the body can be set to: whole, and at each mark of a variable shutter.
    static IEnumerable<Shutter> Openings(Body? body) =>
        body?.ShutterAngle is not { Value: var full }
            ? []
            : body
                .ShutterMarks.Select(m => m.Open.Value)
                .Where(open => open.Sign > 0)
                .Append(1)
                .Distinct()
                .Select(open => new Shutter(full * open));

    static bool CanRun(Body? body, Speed speed)
    {
        var slowest = body?.Slowest?.Value ?? body?.Speeds.Select(s => (Speed?)s.Value).Min();
        var fastest = body?.Fastest?.Value ?? body?.Speeds.Select(s => (Speed?)s.Value).Max();
        return (slowest is not { } least || speed >= least) && (fastest is not { } most || speed <= most);
    }
}
