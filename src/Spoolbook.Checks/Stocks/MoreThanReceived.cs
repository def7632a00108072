using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Stocks;

static class MoreThanReceived
{
    public static readonly RecordCheck Check = new("stock/more-than-received", Level.Error, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        let lot = context.Production.Lots.FirstOrDefault(l => l.Name.Value == roll.Lot?.Value)
        where
            lot is not null && roll.Unit is not null && roll.Unit.Value > lot.Units.Value && !context.Production.Came(lot, roll.Unit.Value)
        select Check.At(
            roll,
            roll.Unit!.Place,
            Sentence.Of(
                "stock/more-than-received.message",
                ("roll", roll.Name.Value),
                ("unit", Context.Number(roll.Unit.Value)),
                ("lot", lot.Name.Value),
                ("units", Context.Count(lot.Units.Value, "unit"))
            )
        ) with
        {
            Others = [new(lot.Units.Place, Sentence.Of("stock/more-than-received.other.what-was-received"))],
            Advice = Sentence.Of("stock/more-than-received.help"),
        };
}
