using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Counters;

static class DaysOutOfOrder
{
    public static readonly RecordCheck Check = new("counter/days-out-of-order", Level.Note, Look);

    // The days are in order of date. Two units on one date have two numbers.
    static IEnumerable<Finding> Look(Context context) =>
        from pair in context.Production.Days.Zip(context.Production.Days.Skip(1))
        let before = pair.First
        let after = pair.Second
        where before.On.Value != after.On.Value && before.Number.Value > after.Number.Value
        select Check.At(
            after.Number.Place,
            Sentence.Of(
                "counter/days-out-of-order.message",
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
}
