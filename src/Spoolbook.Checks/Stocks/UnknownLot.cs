using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Stocks;

static class UnknownLot
{
    public static readonly RecordCheck Check = new("stock/unknown-lot", Level.Error, Look);

    static IEnumerable<Finding> Look(Context context)
    {
        var names = context.Production.Lots.Select(l => l.Name.Value).ToHashSet(StringComparer.Ordinal);
        return OfLog(context.Production, names).Concat(OfRolls(context, names));
    }

    static IEnumerable<Finding> OfLog(Production production, HashSet<string> names) =>
        from entry in production.StockLog
        let lot = entry.Lot
        where lot is not null && !names.Contains(lot.Value)
        select Check.At(lot.Place, $"The stock log tells of lot `{lot.Value}`, and no such lot was received") with
        {
            Figures = [Received(names)],
            Help = Likeness.Nearest(lot.Value, names) is { } near ? $"Did you mean `{near}`?" : "Read the lot off the can's label, and list it under `lots:`.",
        };

    static Figure Received(HashSet<string> names) => new("lots received", names.Count == 0 ? "none" : string.Join(", ", names));

    static IEnumerable<Finding> OfRolls(Context context, HashSet<string> names) =>
        from roll in context.Production.Rolls
        let lot = roll.Lot
        where lot is not null && !names.Contains(lot.Value)
        select Check.At(roll, lot.Place, $"Roll {roll.Name.Value} is of lot `{lot.Value}`, and no such lot was received") with
        {
            Figures = [Received(names)],
            Help = Likeness.Nearest(lot.Value, names) is { } near
                ? $"Did you mean `{near}`?"
                : $"Read the lot off the can's label, and list it: `- {{lot: {lot.Value}, …}}`.",
        };
}
