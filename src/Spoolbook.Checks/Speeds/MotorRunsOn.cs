using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Speeds;

static class MotorRunsOn
{
    public static readonly RecordCheck Check = new("speed/motor-runs-on", Level.Warning, Look);

    // An animation motor turns once for each frame, at up to 8 frames a second.
    static readonly Ratio _fastestTurn = 1 / TimeLapse.UsualTransport;

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        from take in roll.Takes
        let frames = take.SingleFrames?.Place ?? take.Interval?.Place
        let motor = context.Production.MotorNamed(take.Motor?.Value)
        where frames is not null && motor is not null && OnlyRuns(motor)
        select Check.At(
            roll,
            take,
            take.Motor!.Place,
            Sentence.Of("speed/motor-runs-on.message", ("take", take.Slate), ("motor", motor.Name.Value))
        ) with
        {
            Others =
            [
                new Related(frames.Value, Sentence.Of("speed/motor-runs-on.other.frames")),
                new Related(motor.Sync?.Place ?? motor.Speeds[0].Place, Sentence.Of("speed/motor-runs-on.other.motor")),
            ],
            Advice = Sentence.Of("speed/motor-runs-on.help"),
        };

    static bool OnlyRuns(Motor motor) =>
        motor.Sync?.Value == true || (!motor.Speeds.IsEmpty && motor.Speeds.All(s => s.Value.FramesPerSecond > _fastestTurn));
}
