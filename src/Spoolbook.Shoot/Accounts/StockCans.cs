using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>Finds the cans that something happened to, and each one's entries in the stock log.</summary>
static class StockCans
{
    public static ImmutableArray<StockCan> Gather(
        ShootBook book,
        IReadOnlyCollection<StockLoad> placed,
        ImmutableArray<StockShortEnd> shortEnds
    ) =>
        [
            .. Units(book.Production, placed),
            .. shortEnds.Select(e => ShortEnd(e, placed.FirstOrDefault(p => ReferenceEquals(p.Roll, e.UsedBy)))),
        ];

    /// <summary>The entries of the log, in its own order: of these cans, and of short ends that never were.</summary>
    public static ImmutableArray<StockMove> Moves(Production production, ImmutableArray<StockCan> cans)
    {
        var kept = cans.Select(c => c.ShortEnd?.Parent).OfType<Roll>().ToHashSet<Roll>(ReferenceEqualityComparer.Instance);
        var never =
            from name in production.StockLog.Select(e => e.ShortEndOf?.Value).OfType<string>().Distinct(StringComparer.Ordinal)
            let parent = production.RollNamed(name)
            where parent is not null && !kept.Contains(parent)
            let lot = production.LotOf(parent)
            where lot is not null
            from move in StockStory.OfShortEnd(production, lot, parent, Footage.Zero, null)
            select move;
        return
        [
            .. cans.SelectMany(c => c.Moves)
                .Concat(never)
                .OrderBy(m => production.StockLog.IndexOf(m.Entry))
                .ThenBy(m => m.Unit)
                .ThenBy(m => m.Piece),
        ];
    }

    static IEnumerable<StockCan> Units(Production production, IReadOnlyCollection<StockLoad> placed) =>
        from lot in production.Lots
        let loads = placed.Where(p => p.IsUnit && ReferenceEquals(p.Lot, lot)).ToDictionary(p => p.Unit!.Value)
        from unit in loads.Keys.Union(Logged(production, lot)).Order()
        let load = loads.GetValueOrDefault(unit)
        select new StockCan
        {
            Lot = lot,
            Unit = unit,
            Film = lot.Length.Value,
            Load = load,
            Moves = StockStory.OfUnit(production, lot, unit, load?.Roll.Load.On.Value),
        };

    // Of two lots with one name, which is a mistake of its own, the log means the first.
    static IEnumerable<int> Logged(Production production, StockLot lot) =>
        ReferenceEquals(production.Lots.First(l => l.Name.Value == lot.Name.Value), lot)
            ? production.StockLog.Where(e => e.Lot?.Value == lot.Name.Value).SelectMany(StockStory.UnitsOf)
            : [];

    static StockCan ShortEnd(StockShortEnd end, StockLoad? load) =>
        new()
        {
            Lot = end.Lot,
            ShortEnd = end,
            Film = end.Length,
            Load = load,
            Moves = end.Moves,
        };
}
