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
        select Check.At(roll, take, take.Sync!.Place, take.Motor is null
            ? $"Take {take.Slate} is in sync with sound, and ran on the spring"
            : $"Take {take.Slate} is in sync with sound, and the motor {take.Motor.Value} does not hold its speed") with
        {
            Others = motor is null ? [] : [new((motor.Sync ?? (Located<bool>?)null)!.Place, "the motor")],
            Help = "Name the motor that drove it, `motor: …`; or write `sync: no` and keep the sound as a guide.",
        };
}
