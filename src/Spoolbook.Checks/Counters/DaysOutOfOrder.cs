using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Counters;

static class DaysOutOfOrder
{
    public static readonly RecordCheck Check = new("counter/days-out-of-order", Level.Note, Look);

    // Two units number their days apart, each a date.
    const int MostUnits = 3;

    static IEnumerable<Finding> Look(Context context) =>
        from pair in context.Production.Days.Zip(context.Production.Days.Skip(1))
        let message =
            IsFallen(pair.First, pair.Second) ? "counter/days-out-of-order.message"
            : IsSkipped(pair.First, pair.Second) ? "counter/days-out-of-order.message.skipped"
            : null
        where message is not null
        select Find(message, pair.First, pair.Second);

    static Finding Find(string message, ShootingDay before, ShootingDay after) =>
        Check.At(
            after.Number.Place,
            Sentence.Of(
                message,
                ("number", after.Number.Value),
                ("on", Context.Day(after.On.Value)),
                ("before", before.Number.Value),
                ("before-on", Context.Day(before.On.Value))
            )
        ) with
        {
            Others = [new Related(before.Number.Place, Sentence.Of("counter/days-out-of-order.other"))],
            Advice = Sentence.Of("counter/days-out-of-order.help"),
        };

    // The days are in order of date. Two units on one date have two numbers.
    static bool IsFallen(ShootingDay before, ShootingDay after) =>
        before.On.Value != after.On.Value && before.Number.Value > after.Number.Value;

    // Numbers go by shooting days, and a date is at most one: there cannot be more of them than dates.
    static bool IsSkipped(ShootingDay before, ShootingDay after)
    {
        var dates = after.On.Value.DayNumber - before.On.Value.DayNumber;
        return dates > 0 && after.Number.Value - before.Number.Value > Math.Max(dates, MostUnits);
    }
}
