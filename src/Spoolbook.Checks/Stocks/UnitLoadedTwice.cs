using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Stocks;

static class UnitLoadedTwice
{
    public static readonly RecordCheck Check = new("stock/unit-loaded-twice", Level.Error, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from unit in from roll in context.Production.Rolls
                     where roll is { Lot: not null, Unit: not null, ShortEndOf: null }
                     group roll by (Lot: roll.Lot!.Value, Unit: roll.Unit!.Value)
        let first = unit.First()
        from again in unit.Skip(1)
        select Check.At(
            again,
            again.Unit!.Place,
            Sentence.Of(
                "stock/unit-loaded-twice.message",
                ("again", again.Name.Value),
                ("unit", Context.Number(unit.Key.Unit)),
                ("lot", unit.Key.Lot),
                ("first", first.Name.Value)
            )
        ) with
        {
            Others =
            [
                new(first.Unit!.Place, Sentence.Of("stock/unit-loaded-twice.other.first-loaded-here-as-roll", ("first", first.Name.Value))),
            ],
            Advice = Sentence.Of("stock/unit-loaded-twice.help", ("first", first.Name.Value)),
        };
}
