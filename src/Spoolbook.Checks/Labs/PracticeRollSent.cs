using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Labs;

static class PracticeRollSent
{
    public static readonly RecordCheck Check = new("lab/practice-roll-sent", Level.Error, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where roll.IsPractice
        let sent = roll.Lab?.Send is { Value: true } send ? send.Place : Consigned.To(context.Production, roll).Select(c => c.Naming.Place).FirstOrDefault()
        where sent.File is { Length: > 0 }
        select Check.At(roll, sent, $"Roll {roll.Name.Value} is for practising the load, and is sent to the lab") with
        {
            Others = [new(roll.Practice!.Place, "for practice")],
            Help = "Write `send: no` and name it in no consignment, or take `practice:` out if something was shot on it after all.",
        };
}
