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
        select Check.At(lot.Place, Sentence.Of("stock/unknown-lot.message.log", ("lot", lot.Value))) with
        {
            Figures = [Received(names)],
            Advice = Likeness.Nearest(lot.Value, names) is { } near
                ? Sentence.Of("common.did-you-mean", ("near", near))
                : Sentence.Of("stock/unknown-lot.help.log"),
        };

    static Figure Received(HashSet<string> names) =>
        new(
            Sentence.Of("stock/unknown-lot.figure.lots-received"),
            names.Count == 0 ? Sentence.Of("stock/unknown-lot.value.none") : string.Join(", ", names)
        );

    static IEnumerable<Finding> OfRolls(Context context, HashSet<string> names) =>
        from roll in context.Production.Rolls
        let lot = roll.Lot
        where lot is not null && !names.Contains(lot.Value)
        select Check.At(roll, lot.Place, Sentence.Of("stock/unknown-lot.message.roll", ("roll", roll.Name.Value), ("lot", lot.Value))) with
        {
            Figures = [Received(names)],
            Advice = Likeness.Nearest(lot.Value, names) is { } near
                ? Sentence.Of("common.did-you-mean", ("near", near))
                : Sentence.Of("stock/unknown-lot.help.roll", ("lot", lot.Value)),
        };
}
