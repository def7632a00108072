using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Speeds;

static class SyncNeedsMotor
{
    public static readonly RecordCheck Check = new("speed/sync-needs-motor", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        from take in roll.Takes
        where take.Sync?.Value == true
        let motor = context.Production.MotorNamed(take.Motor?.Value)
        where take.Motor is null || motor?.Sync?.Value == false
        select Check.At(
            roll,
            take,
            take.Sync!.Place,
            take.Motor is null
                ? Sentence.Of("speed/sync-needs-motor.message.spring", ("take", take.Slate))
                : Sentence.Of("speed/sync-needs-motor.message.motor", ("take", take.Slate), ("motor", take.Motor.Value))
        ) with
        {
            Others = motor is null
                ? []
                : [new((motor.Sync ?? (Located<bool>?)null)!.Place, Sentence.Of("speed/sync-needs-motor.other.the-motor"))],
            Advice = Sentence.Of("speed/sync-needs-motor.help"),
        };
}
