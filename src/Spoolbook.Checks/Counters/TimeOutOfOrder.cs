using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Counters;

static class TimeOutOfOrder
{
    public static readonly RecordCheck Check = new("counter/time-out-of-order", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice
        let clock = new RollClock(context.WalkOf(roll), context.Of(Tolerances.ClockSlack))
        from wrong in clock.OutOfOrder()
        select Find(roll, wrong.Moment, wrong.Against);

    static Finding Find(Roll roll, RollClock.Moment wrong, RollClock.Moment against)
    {
        var sameDay = wrong.From.Date == against.From.Date;
        var isAbove = against.Place.Line < wrong.Place.Line || against.Place.Column < wrong.Place.Column;
        return Check.At(
            roll,
            wrong.Place,
            Sentence.Of(
                isAbove ? "counter/time-out-of-order.message.above" : "counter/time-out-of-order.message.below",
                ("who", wrong.Who),
                ("did", wrong.Did),
                ("at", wrong.Written(sameDay)),
                ("against-who", against.Who),
                ("against-did", against.Did),
                ("against-at", against.Written(sameDay))
            )
        ) with
        {
            Take = (wrong.Entry as Take)?.Slate,
            Others = [new(against.Place, Sentence.Of("counter/time-out-of-order.other", ("who", against.Who), ("did", against.Did)))],
            Advice = Sentence.Of(
                wrong.Entry switch
                {
                    Take { On: null, Day: null } => "counter/time-out-of-order.help.take",
                    { Day: null } and not Take and not Reload { On: not null } => "counter/time-out-of-order.help.entry",
                    _ => "counter/time-out-of-order.help.other",
                }
            ),
        };
    }
}
