using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Stocks;

static class NoUnit
{
    public static readonly RecordCheck Check = new("stock/no-unit", Level.Note, Look);

    // A practice spool is loaded many times, and its number means little.
    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where roll is { IsPractice: false, Unit: null, ShortEndOf: null, Lot: not null }
        let lot = context.Production.LotOf(roll)
        where lot is { Units.Value: > 1 }
        select Check.At(
            roll,
            roll.Lot!.Place,
            Sentence.Of("stock/no-unit.message", ("roll", roll.Name.Value), ("lot", lot.Name.Value), ("units", lot.Units.Value))
        ) with
        {
            Others = [new Related(lot.Units.Place, Sentence.Of("stock/no-unit.other"))],
            Advice = Sentence.Of("stock/no-unit.help"),
        };
}
