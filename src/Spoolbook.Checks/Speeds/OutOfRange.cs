using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Speeds;

static class OutOfRange
{
    public static readonly RecordCheck Check = new("speed/out-of-range", Level.Error, Look);

    static IEnumerable<Finding> Look(Context context) =>
        Bodies(context).Concat(Loads(context)).Concat(context.Production.Rolls.SelectMany(r => Motors(context, r)));

    // Only where a speed is written: the takes that keep it are wrong because of it.
    static IEnumerable<Finding> Bodies(Context context) =>
        from roll in context.Production.Rolls
        from shot in context.TakesWithBodies(roll)
        let finding = shot is { Body: { } body, Take.SpeedWritten: { } speed } ? Outside(roll, shot.Take, speed, body) : null
        where finding is not null
        select finding;

    // A motor turns the camera at a speed of its own.
    static IEnumerable<Finding> Loads(Context context) =>
        from roll in context.Production.Rolls
        let body = context.Production.BodyNamed(roll.Body?.Value)
        where body is not null && roll.Takes.All(t => t.Motor is null)
        let finding = roll.Load.SpeedAfter is { } after ? Outside(roll, null, after, body) : null
        where finding is not null
        select finding;

    // A motor has the speeds that its switch has, where it holds them; any between them, where it does not. Frame by frame
    // the speed counts for nothing.
    static IEnumerable<Finding> Motors(Context context, Roll roll) =>
        from run in Runs.Of(roll.Takes, take => Driven(context, roll, take))
        let take = run.First
        let motor = run.Fault.Motor
        select Check.At(
            roll,
            take,
            take.SpeedWritten?.Place ?? take.Motor!.Place,
            Sentence.Of(
                take.SpeedWritten is null ? "speed/out-of-range.message.motor-kept" : "speed/out-of-range.message.motor",
                ("takes", run.Slates),
                ("speed", run.Fault.Speed.ToString()),
                ("motor", motor.Name.Value)
            )
        ) with
        {
            Others = [new Related(motor.Speeds[0].Place, Sentence.Of("speed/out-of-range.other.motor"))],
            Figures =
            [
                new Figure(Sentence.Of("speed/out-of-range.figure.motor"), string.Join(", ", motor.Speeds.Select(s => s.Value.ToString()))),
            ],
            Advice = Sentence.Of("speed/out-of-range.help.motor"),
        };

    // A take at the loading speed has a check of its own.
    static MotorSpeed? Driven(Context context, Roll roll, Take take) =>
        take is { Motor: { } name, Interval: null, SingleFrames: null, Timed: null }
        && context.Production.MotorNamed(name.Value) is { Speeds.IsEmpty: false } motor
        && !CanRun(motor, take.Speed)
        && (take.SpeedWritten is not null || context.Production.BodyNamed(roll.Body?.Value)?.LoadingSpeed?.Value != take.Speed)
            ? new MotorSpeed(motor, take.Speed)
            : null;

    static bool CanRun(Motor motor, Speed speed) =>
        motor.Sync?.Value == true
            ? motor.Speeds.Any(s => s.Value == speed)
            : motor.Speeds.Min(s => s.Value.FramesPerSecond) <= speed.FramesPerSecond
                && speed.FramesPerSecond <= motor.Speeds.Max(s => s.Value.FramesPerSecond);

    static Finding? Outside(Roll roll, Take? take, Located<Speed> speed, Body body)
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
        var message = take is null
            ? Sentence.Of(
                tooSlow ? "speed/out-of-range.message.load-slow" : "speed/out-of-range.message.load-fast",
                ("roll", roll.Name.Value),
                ("speed", speed.Value.ToString()),
                ("body", body.Name.Value),
                ("limit", limit.ToString())
            )
            : Sentence.Of(
                tooSlow ? "speed/out-of-range.message.slow" : "speed/out-of-range.message.fast",
                ("take", take.Slate),
                ("speed", speed.Value.ToString()),
                ("body", body.Name.Value),
                ("limit", limit.ToString())
            );
        return Check.At(roll, speed.Place, message) with
        {
            Take = take?.Slate,
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

    sealed record MotorSpeed(Motor Motor, Speed Speed);
}
