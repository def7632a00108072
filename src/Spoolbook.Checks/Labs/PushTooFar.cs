using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Labs;

static class PushTooFar
{
    public static readonly RecordCheck Check = new("lab/push-too-far", Level.Error, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        let push = roll.Lab?.Push
        let most = context.Production.Lab?.PushMost
        where Orders.GoesToLab(roll) && push is not null && most is not null && Math.Abs(push.Value) > most.Value
        select Check.At(roll, push.Place, $"Roll {roll.Name.Value} is to be {(push.Value > 0 ? "pushed" : "pulled")} by {Context.Stops(Math.Abs(push.Value))}, and the lab goes no farther than {Context.Stops(most.Value)}") with
        {
            Others = [new(most.Place, "the farthest that the lab goes")],
            Help = "Ask the lab what it can do, and write that.",
        };
}
