using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Stocks;

static class UnknownLot
{
    public static readonly RecordCheck Check = new("stock/unknown-lot", Level.Error, Look);

    static IEnumerable<Finding> Look(Context context)
    {
        var names = context.Production.Lots.Select(l => l.Name.Value).ToHashSet(StringComparer.Ordinal);
        return from roll in context.Production.Rolls
               let lot = roll.Lot
               where lot is not null && !names.Contains(lot.Value)
               select Check.At(roll, lot.Place, $"Roll {roll.Name.Value} is of lot `{lot.Value}`, and no such lot was received") with
               {
                   Figures = [new("lots received", names.Count == 0 ? "none" : string.Join(", ", names))],
                   Help = Likeness.Nearest(lot.Value, names) is { } near
                       ? $"Did you mean `{near}`?"
                       : $"Read the lot off the can's label, and list it: `- {{lot: {lot.Value}, …}}`.",
               };
    }
}
