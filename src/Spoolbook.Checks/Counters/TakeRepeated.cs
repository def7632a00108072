using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Counters;

static class TakeRepeated
{
    public static readonly RecordCheck Check = new("counter/take-repeated", Level.Error, Look);

    // Every roll has its tests (scratch, focus) under one slate, and nobody cuts them.
    static IEnumerable<Finding> Look(Context context) =>
        from slate in from roll in context.Production.Rolls
                      where !roll.IsPractice
                      from take in roll.Takes
                      where take.Mark.Value != Shoot.Records.Mark.Test
                      group (roll, take) by (take.Scene.Value, take.Shot?.Value, take.Number.Value)
        let first = slate.First()
        from again in slate.Skip(1)
        select Check.At(
            again.roll,
            again.take,
            again.take.Number.Place,
            Sentence.Of("counter/take-repeated.message", ("take", again.take.Slate))
        ) with
        {
            Others =
            [
                new(
                    first.take.Number.Place,
                    Sentence.Of("counter/take-repeated.other.first-used-here-on", ("roll", first.roll.Name.Value))
                ),
            ],
            Advice = Sentence.Of("counter/take-repeated.help", ("check", Check.Name), ("take", again.take.Slate)),
        };
}
