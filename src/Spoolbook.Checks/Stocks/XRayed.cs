using System.Collections.Immutable;
using Spoolbook.Checks.Running;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Stocks;

static class XRayed
{
    public static readonly BookCheck Check = new("stock/x-rayed", Level.Warning, Look);

    // What adds up is the passes of one film, whichever entries they are written in. Cans of the same passes are one finding.
    static IEnumerable<Finding> Look(Context context, Books books)
    {
        var allowed = context.Of(Tolerances.XRayPasses);
        var films = books.Stock.XRayed;
        var known = films.SelectMany(f => f.Entries).ToHashSet<StockXRayed>(ReferenceEqualityComparer.Instance);
        var strangers = context.Production.StockLog.OfType<StockXRayed>().Where(e => !known.Contains(e));
        return films
            .GroupBy(f => f.Entries, new SameEntries())
            .Select(cans => (What: What(cans, films), Entries: cans.Key))
            .Concat(strangers.Select(e => (What: What(e), Entries: ImmutableArray.Create(e))))
            .Where(found => found.Entries.Sum(Passes) > allowed && !IsPractice(context.Production, found.Entries[0]))
            .Select(found => Finding(found.What, found.Entries, allowed, context.Production));
    }

    static Finding Finding(Sentence what, ImmutableArray<StockXRayed> entries, long allowed, Production production)
    {
        // Where a whole lot went through and one of its cans once more, the finding is at the entry about that can.
        var ordered = entries.OrderBy(e => e.On.Value.Earliest).ToArray();
        var first = ordered.MinBy(e => (e.ShortEndOf is null, e.Units.IsEmpty ? int.MaxValue : e.Units.Length))!;
        var all = entries.Sum(Passes);
        return Check.At(
            first.Place,
            Sentence.Of(
                all == 1 ? "stock/x-rayed.message.once" : "stock/x-rayed.message.times",
                ("what", what),
                ("times", Context.Number(all))
            )
        ) with
        {
            Lot = first.Lot?.Value ?? production.RollNamed(first.ShortEndOf!.Value)?.Lot?.Value,
            Others = [.. ordered.Where(e => e != first).Select(e => new Related(e.Place, Sentence.Of("stock/x-rayed.other.and-here")))],
            Figures =
            [
                new(Sentence.Of("stock/x-rayed.figure.passes"), Context.Number(all)),
                new(Sentence.Of("stock/x-rayed.figure.let-pass"), Context.Number(allowed)),
            ],
            Advice = Sentence.Of("stock/x-rayed.help"),
        };
    }

    static long Passes(StockXRayed entry) => entry.Passes?.Value ?? 1;

    // The cans by their numbers: all units of a lot by the lot, all pieces of a short end by the short end. Short ends that went
    // through nothing since they were cut go with the unit.
    static Sentence What(IGrouping<ImmutableArray<StockXRayed>, XRayedFilm> cans, ImmutableArray<XRayedFilm> films)
    {
        var lot = cans.First().Lot;
        if (cans.Any(c => c.ShortEnd is null))
        {
            var isAll =
                cans.Key.Any(e => e is { ShortEndOf: null, Units.IsEmpty: true })
                && films.Count(f => f.ShortEnd is null && ReferenceEquals(f.Lot, lot)) == cans.Count(c => c.ShortEnd is null);
            return OfUnits(lot.Name.Value, isAll ? [] : [.. cans.Select(c => c.Unit).OfType<int>()]);
        }

        var names = cans.Select(c => c.ShortEnd!)
            .GroupBy(e => e.Parent.Name.Value, StringComparer.Ordinal)
            .SelectMany(ends =>
                ends.Count() == films.Count(f => f.ShortEnd?.Parent.Name.Value == ends.Key)
                    ?
                    [
                        StockShortEnd.NameOf(
                            ends.Key,
                            ends.Count() == 1 && ends.First() is { IsWhole: false, Piece: var piece } ? piece : null
                        ),
                    ]
                    : ends.Select(e => e.Name)
            );
        return Sentence.Of("stock/x-rayed.value.short-end", ("name", string.Join(", ", names)));
    }

    static Sentence What(StockXRayed entry) =>
        entry.ShortEndOf is { } parent
            ? Sentence.Of("stock/x-rayed.value.short-end", ("name", StockShortEnd.NameOf(parent.Value, entry.Piece?.Value)))
            : OfUnits(entry.Lot!.Value, [.. entry.Units.Select(u => u.Value)]);

    static Sentence OfUnits(string lot, ImmutableArray<int> units) =>
        units.Distinct().Order().Select(u => Context.Number(u)).ToArray() switch
        {
            [] => Sentence.Of("stock/x-rayed.value.lot", ("lot", lot)),
            [var only] => Sentence.Of("stock/x-rayed.value.unit", ("unit", only), ("lot", lot)),
            var several => Sentence.Of("stock/x-rayed.value.units", ("units", string.Join(", ", several)), ("lot", lot)),
        };

    static bool IsPractice(Production production, StockXRayed entry) =>
        production.Lots.FirstOrDefault(l => l.Name.Value == entry.Lot?.Value)?.Practice?.Value ?? false;

    sealed class SameEntries : IEqualityComparer<ImmutableArray<StockXRayed>>
    {
        public bool Equals(ImmutableArray<StockXRayed> x, ImmutableArray<StockXRayed> y) =>
            x.AsSpan().SequenceEqual(y.AsSpan(), ReferenceEqualityComparer.Instance);

        public int GetHashCode(ImmutableArray<StockXRayed> entries) => entries.Length;
    }
}
