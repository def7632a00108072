using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Labs;

static class PushTooFar
{
    public static readonly RecordCheck Check = new("lab/push-too-far", Level.Error, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        let push = roll.Lab?.Push
        let most = context.Production.Lab?.PushMost
        where roll.GoesToLab && push is not null && most is not null && Math.Abs(push.Value) > most.Value
        select Check.At(
            roll,
            push.Place,
            Sentence.Of(
                push.Value > 0 ? "lab/push-too-far.message.push" : "lab/push-too-far.message.pull",
                ("roll", roll.Name.Value),
                ("ordered", Context.Stops(Math.Abs(push.Value))),
                ("most", Context.Stops(most.Value))
            )
        ) with
        {
            Others = [new(most.Place, Sentence.Of("lab/push-too-far.other.the-farthest-that-the-lab-goes"))],
            Advice = Sentence.Of("lab/push-too-far.help"),
        };
}
