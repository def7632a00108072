using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Stocks;

static class XRayed
{
    public static readonly RecordCheck Check = new("stock/x-rayed", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context)
    {
        var allowed = context.Of(Tolerances.XRayPasses);
        var passes = context
            .Production.StockLog.OfType<StockXRayed>()
            .Where(e => !IsPractice(context.Production, e))
            .OrderBy(e => e.On.Value.Earliest)
            .ToArray();
        return from what in passes.GroupBy(entry => What(entry, context.Production))
               let all = what.Sum(e => (long)(e.Passes?.Value ?? 1))
               where all > allowed
               let first = what.First()
               select Check.At(
                   first.Place,
                   Sentence.Of(
                       all == 1 ? "stock/x-rayed.message.once" : "stock/x-rayed.message.times",
                       ("what", what.Key),
                       ("times", Context.Number(all))
                   )
               ) with
               {
                   Lot = first.Lot?.Value ?? context.Production.RollNamed(first.ShortEndOf!.Value)?.Lot?.Value,
                   Others = [.. what.Skip(1).Select(e => new Related(e.Place, Sentence.Of("stock/x-rayed.other.and-here")))],
                   Figures =
                   [
                       new(Sentence.Of("stock/x-rayed.figure.passes"), Context.Number(all)),
                    new(Sentence.Of("stock/x-rayed.figure.let-pass"), Context.Number(allowed)),
                ],
                   Advice = Sentence.Of("stock/x-rayed.help"),
               };
    }

    static Sentence What(StockXRayed entry, Production production) =>
        entry switch
        {
            { ShortEndOf: { } parent } => Sentence.Of(
                "stock/x-rayed.value.short-end",
                ("name", StockShortEnd.NameOf(parent.Value, IsCut(parent.Value, production) ? entry.Piece?.Value : null))
            ),
            { Units.IsEmpty: true } => Sentence.Of("stock/x-rayed.value.lot", ("lot", entry.Lot!.Value)),
            { Units: [var only] } => Sentence.Of(
                "stock/x-rayed.value.unit",
                ("unit", Context.Number(only.Value)),
                ("lot", entry.Lot!.Value)
            ),
            _ => Sentence.Of(
                "stock/x-rayed.value.units",
                ("units", string.Join(", ", entry.Units.Select(u => u.Value).Distinct().Order().Select(u => Context.Number(u)))),
                ("lot", entry.Lot!.Value)
            ),
        };

    // A short end that nobody cut has no number on its can.
    static bool IsCut(string parent, Production production) =>
        production.StockLog.OfType<StockSplit>().Any(s => s.ShortEndOf?.Value == parent);

    static bool IsPractice(Production production, StockXRayed entry) =>
        production.Lots.FirstOrDefault(l => l.Name.Value == entry.Lot?.Value)?.Practice?.Value ?? false;
}
