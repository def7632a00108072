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
        var where = against.Place.Line < wrong.Place.Line || against.Place.Column < wrong.Place.Column ? "above" : "below";
        return Check.At(roll, wrong.Place, $"By the sheet {wrong.Who} {wrong.Did} at {wrong.Written(sameDay)}, and {against.Who}, which stands {where} it, {against.Did} at {against.Written(sameDay)}") with
        {
            Take = (wrong.Entry as Take)?.Slate,
            Others = [new(against.Place, $"{against.Who} {against.Did}")],
            Help = wrong.Entry switch
            {
                Take { On: null, Day: null } => "Correct the time that is wrong: sound and picture are put together by it. If the take was on another day than what stands before it, write that day on it, `on: …`.",
                { Day: null } and not Take and not Reload { On: not null } => "Correct the time that is wrong. If it was on another day than what stands before it, write that day on it, `day: …`.",
                _ => "Correct the one that is wrong: sound and picture are put together by it.",
            },
        };
    }
}
