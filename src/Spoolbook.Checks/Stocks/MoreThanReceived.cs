using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Stocks;

static class MoreThanReceived
{
    public static readonly RecordCheck Check = new("stock/more-than-received", Level.Error, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        let lot = context.Production.Lots.FirstOrDefault(l => l.Name.Value == roll.Lot?.Value)
        where lot is not null && roll.Unit is not null && roll.Unit.Value > lot.Units.Value && !context.Production.Came(lot, roll.Unit.Value)
        select Check.At(roll, roll.Unit!.Place, $"Roll {roll.Name.Value} is unit {Context.Number(roll.Unit.Value)} of lot {lot.Name.Value}, of which {Context.Count(lot.Units.Value, "unit")} came") with
        {
            Others = [new(lot.Units.Place, "what was received")],
            Help = "Read the unit off the can's label; if more were delivered, correct `units:`; if it came later, add `- came:` to the stock log.",
        };
}
