using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Checks.Counters;

static class DayNotListed
{
    public static readonly RecordCheck Check = new("counter/day-not-listed", Level.Warning, Look, NeedsAll: true);

    // Once for each day: one slip in the list is on every roll of that day.
    static IEnumerable<Finding> Look(Context context) =>
        context.Production.Days.IsEmpty
            ? []
            : from day in from roll in context.Production.Rolls
                          where !roll.IsPractice
                          let walk = context.WalkOf(roll)
                          from moment in walk.Moments
                          where IsOff(context, moment)
                          group (walk, moment) by moment.Day
              orderby day.Key
              select Find(context, day.Key, [.. day]);

    // Tests are shot before, and rolls are loaded the evening before and taken out on the morning after.
    static bool IsOff(Context context, Moment moment) =>
        moment.Entry is not (null or Take { Mark.Value: Mark.Test } or Remark or Wind)
        && context.Production.Days.All(d => d.On.Value != moment.Day);

    static Finding Find(Context context, DateOnly day, (RollWalk Walk, Moment Moment)[] off)
    {
        var roll = off[0].Walk.Roll;
        var listed = context.Production.Days.MinBy(d => Math.Abs(d.On.Value.DayNumber - day.DayNumber))!;
        var otherYear = context.Production.Days.FirstOrDefault(d => (d.On.Value.Month, d.On.Value.Day) == (day.Month, day.Day));
        var names = Context.And(off.Select(o => o.Walk.Roll.Name.Value).Distinct());
        return Check.At(
            roll,
            PlaceOf(roll, off[0].Moment),
            Sentence.Of("counter/day-not-listed.message", ("rolls", names), ("day", Context.Day(day)))
        ) with
        {
            Others = [new Related((otherYear ?? listed).On.Place, Sentence.Of("counter/day-not-listed.other"))],
            Advice = otherYear is null
                ? Sentence.Of("counter/day-not-listed.help", ("day", Context.Day(day)))
                : Sentence.Of("counter/day-not-listed.help.year", ("listed", Context.Day(otherYear.On.Value))),
        };
    }

    static Place PlaceOf(Roll roll, Moment moment) =>
        moment.Entry switch
        {
            { Day: { } day } => day.Place,
            Take { On: { } on } => on.Place,
            Reload { On: { } on } => on.Place,
            _ => roll.Load.Day?.Place ?? roll.Load.On.Place,
        };
}
