using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Labs;

static class PracticeRollSent
{
    public static readonly RecordCheck Check = new("lab/practice-roll-sent", Level.Error, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where roll.IsPractice && roll.Lab?.Send?.Value == true
        select Check.At(roll, roll.Lab!.Send!.Place, $"Roll {roll.Name.Value} is for practising the load, and is sent to the lab") with
        {
            Others = [new(roll.Practice!.Place, "for practice")],
            Help = "Write `send: no`, or take `practice:` out if something was shot on it after all.",
        };
}
