using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Speeds;

static class SyncNeedsMotor
{
    const string NotSaid = "speed/sync-needs-motor.message.not-said";

    public static readonly RecordCheck Check = new("speed/sync-needs-motor", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        from take in roll.Takes
        where take.Sync?.Value == true
        let motor = context.Production.MotorNamed(take.Motor?.Value)
        let says = Describe(context, take, motor)
        where says is not null
        select Check.At(
            roll,
            take,
            take.Sync!.Place,
            Sentence.Of(says, ("take", take.Slate), ("motor", take.Motor?.Value ?? ""), ("speed", take.Speed.ToString()))
        ) with
        {
            Level = says == NotSaid ? Level.Note : Level.Warning,
            Others = motor is null
                ? []
                : [new(motor.Sync?.Place ?? motor.Name.Place, Sentence.Of("speed/sync-needs-motor.other.the-motor"))],
            Advice = Sentence.Of(says == NotSaid ? "speed/sync-needs-motor.help.not-said" : "speed/sync-needs-motor.help"),
        };

    // A motor that the kit lacks is flagged by itself.
    static string? Describe(Context context, Take take, Motor? motor) =>
        take switch
        {
            { Interval: not null } or { SingleFrames: not null } => "speed/sync-needs-motor.message.frames",
            { HandCranked.Value: true } => "speed/sync-needs-motor.message.hand",
            { Motor: null } => "speed/sync-needs-motor.message.spring",
            _ when IsOtherSpeed(context, take) && motor?.Speeds.Any(s => s.Value == take.Speed) == true =>
                "speed/sync-needs-motor.message.speed",
            _ when motor is null || motor.Sync?.Value == true => null,
            _ when motor.Sync is null => NotSaid,
            _ => "speed/sync-needs-motor.message.motor",
        };

    // Sound for a film at 25 may be recorded at 24. A speed that the motor has not has a check of its own.
    static bool IsOtherSpeed(Context context, Take take)
    {
        var projected = context.Production.ProjectedAt.FramesPerSecond;
        var off = (take.Speed.FramesPerSecond - projected) / projected;
        return (off.Sign < 0 ? -off : off) > context.Of(Tolerances.SpeedsAlike);
    }
}
