using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Labs;

static class ProcessMismatch
{
    public static readonly RecordCheck Check = new("lab/process-mismatch", Level.Error, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        let lot = context.Production.LotOf(roll)
        let ordered = roll.Lab?.Process
        where Orders.GoesToLab(roll) && ordered is not null && lot is not null && lot.Process.Value != ordered.Value
        select Check.At(roll, ordered.Place, $"Roll {roll.Name.Value} is ordered through {ordered.Value}, and its stock is made for {lot.Process.Value}") with
        {
            Others = [new(lot.Process.Place, "what the stock is made for")],
            Figures = [new("stock", lot.Stock.Value), new("made for", lot.Process.Value), new("ordered", ordered.Value)],
            Help = $"Write `process: {lot.Process.Value}`. If it is cross-processed on purpose, accept it with a reason, since the lab will ask: "
                + $"`accept: [{{check: {Check.Name}, reason: …}}]`.",
        };
}
