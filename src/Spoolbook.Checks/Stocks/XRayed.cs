using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Stocks;

static class XRayed
{
    public static readonly RecordCheck Check = new("stock/x-rayed", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context)
    {
        var allowed = context.Of(Tolerances.XRayPasses);
        var passes = context.Production.StockLog.OfType<StockXRayed>().Where(e => !IsPractice(context.Production, e)).OrderBy(e => e.On.Value.Earliest).ToArray();
        return from what in passes.GroupBy(What)
               let all = what.Sum(e => (long)(e.Passes?.Value ?? 1))
               where all > allowed
               let first = what.First()
               select Check.At(first.Place, $"{what.Key} went through an X-ray machine {(all == 1 ? "once" : $"{Context.Number(all)} times")}") with
               {
                   Lot = first.Lot?.Value ?? context.Production.RollNamed(first.ShortEndOf!.Value)?.Lot?.Value,
                   Others = [.. what.Skip(1).Select(e => new Related(e.Place, "and here"))],
                   Figures = [new("passes", Context.Number(all)), new("let pass", Context.Number(allowed))],
                   Help = "Have a test of it processed before you shoot anything that cannot be shot again, tell the lab, and ask for inspection by hand next time: a changing bag and a letter help.",
               };
    }

    static string What(StockXRayed entry) => entry switch
    {
        { ShortEndOf: { } parent } => $"The short end of roll {parent.Value}",
        { Units.IsEmpty: true } => $"Lot {entry.Lot!.Value}",
        { Units: [var only] } => $"Unit {Context.Number(only.Value)} of lot {entry.Lot!.Value}",
        _ => $"Units {string.Join(", ", entry.Units.Select(u => u.Value).Distinct().Order().Select(u => Context.Number(u)))} of lot {entry.Lot!.Value}",
    };

    static bool IsPractice(Production production, StockXRayed entry) =>
        production.Lots.FirstOrDefault(l => l.Name.Value == entry.Lot?.Value)?.Practice?.Value ?? false;
}
