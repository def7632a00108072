using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>
/// How often film went through an X-ray machine, by the stock log: passes of its own can, of the whole lot, and of the can that
/// it was cut from, up to the day it was cut.
/// </summary>
sealed class StockXRays(Production production, IEnumerable<StockLoad> loads, ImmutableArray<StockShortEnd> shortEnds)
{
    readonly ImmutableArray<StockXRayed> _log = [.. production.StockLog.OfType<StockXRayed>()];
    readonly ImmutableArray<StockLoad> _loads = [.. loads];

    /// <summary>Passes of a roll's film, loaded or not yet, exposed or not.</summary>
    public int Of(StockLoad load) => XRayedFilm.PassesOf(Entries(load));

    /// <summary>Passes of a unit that was not loaded yet.</summary>
    public int Of(StockLot lot, int unit) => XRayedFilm.PassesOf(Entries(lot, unit));

    /// <summary>Passes of a short end's film.</summary>
    public int Of(StockShortEnd end) => XRayedFilm.PassesOf(Entries(end));

    /// <summary>Each unit and each short end that went through a machine.</summary>
    /// <param name="lots">The lots, of which some units were not loaded yet.</param>
    public ImmutableArray<XRayedFilm> Films(IEnumerable<StockLotBook> lots) =>
        [
            .. _loads
                .Where(load => load.IsUnit)
                .Select(load => new XRayedFilm(load.Lot, load.Unit, null, Entries(load)))
                .Concat(lots.SelectMany(l => l.Sealed.Select(unit => new XRayedFilm(l.Lot, unit, null, Entries(l.Lot, unit)))))
                .Concat(shortEnds.Select(end => new XRayedFilm(end.Lot, null, end, Entries(end))))
                .Where(film => !film.Entries.IsEmpty),
        ];

    ImmutableArray<StockXRayed> Entries(StockLoad load) =>
        Entries(
            load.Lot,
            [Can(load, null), .. load.Parent is { } parent ? Ancestors(parent, load.Roll.Load.On.Value) : []],
            production.SentOn(load.Roll)?.Value
        );

    ImmutableArray<StockXRayed> Entries(StockLot lot, int unit) => Entries(lot, [new Origin(unit, null, null, null)], null);

    ImmutableArray<StockXRayed> Entries(StockShortEnd end) =>
        Entries(end.Lot, [new Origin(null, end.Parent, end.Piece, null), .. Ancestors(end.Parent, DateTime.MaxValue)], null);

    // A pass of the whole lot, once the film is at the lab, was not of this film.
    ImmutableArray<StockXRayed> Entries(StockLot lot, ImmutableArray<Origin> origins, DateOnly? sent) =>
        [
            .. _log.Where(e =>
                e is { ShortEndOf: null, Units.IsEmpty: true }
                    ? e.Lot?.Value == lot.Name.Value && !(e.On.Value.Day > sent)
                    : origins.Any(o => o.IsIn(e, lot))
            ),
        ];

    // The cans that a short end was cut from, each up to its cutting. A careless sheet may name a roll as its own parent.
    ImmutableArray<Origin> Ancestors(Roll parent, DateTime until)
    {
        var origins = ImmutableArray.CreateBuilder<Origin>();
        var seen = new HashSet<Roll>(ReferenceEqualityComparer.Instance);
        var roll = parent;
        while (roll is not null && seen.Add(roll))
        {
            until = roll.Unload is { } unload && unload.On.Value < until ? unload.On.Value : until;
            var load = _loads.FirstOrDefault(l => ReferenceEquals(l.Roll, roll));
            if (load is not null)
            {
                origins.Add(Can(load, until));
            }

            roll = load?.Parent;
        }

        return origins.DrainToImmutable();
    }

    Origin Can(StockLoad load, DateTime? until) =>
        new(load.Unit, load.Parent, shortEnds.FirstOrDefault(e => ReferenceEquals(e.UsedBy, load.Roll))?.Piece, until);

    // A can that the film was in: a unit, or a piece of a short end, and until when.
    readonly record struct Origin(int? Unit, Roll? Parent, int? Piece, DateTime? Until)
    {
        public bool IsIn(StockXRayed entry, StockLot lot) =>
            !(entry.On.Value.Earliest > Until)
            && (
                entry.ShortEndOf is { } named
                    ? Parent?.Name.Value == named.Value && (entry.Piece is not { } piece || piece.Value == Piece)
                    : Unit is { } unit && entry.Lot?.Value == lot.Name.Value && StockStory.UnitsOf(entry).Contains(unit)
            );
    }
}
