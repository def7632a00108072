using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;

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
        select Check.At(again, again.Unit!.Place, $"Roll {again.Name.Value} is unit {Context.Number(unit.Key.Unit)} of lot {unit.Key.Lot}, and so is roll {first.Name.Value}") with
        {
            Others = [new(first.Unit!.Place, $"first loaded here, as roll {first.Name.Value}")],
            Help = "Compare the labels of the two cans: one roll is of another unit, or it was exposed twice. "
                + $"If it is what was left of the first, write `short-end-of: {first.Name.Value}` instead of lot and unit.",
        };
}
