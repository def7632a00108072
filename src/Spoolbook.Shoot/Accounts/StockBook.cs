using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>How much film came, where it is, and how well it was used.</summary>
public sealed record StockBook
{
    /// <summary>Every lot, in the production's order, practice lots included.</summary>
    public required ImmutableArray<StockLotBook> Lots { get; init; }

    /// <summary>The rolls with the stock they were loaded from, in the production's order, practice rolls included.</summary>
    public required ImmutableArray<StockLoad> Loads { get; init; }

    /// <summary>Short ends kept, and the pieces of those that were cut, in the order of their rolls.</summary>
    public required ImmutableArray<StockShortEnd> ShortEnds { get; init; }

    /// <summary>Film that went through an X-ray machine, can by can.</summary>
    public required ImmutableArray<XRayedFilm> XRayed { get; init; }

    /// <summary>How often sealed units went through an X-ray machine, by lot and number; without those that never did.</summary>
    public required ImmutableDictionary<(string Lot, int Unit), int> XRayedUnits { get; init; }

    /// <summary>Every can that something happened to: units loaded or in the stock log, by lot and number, then short ends.</summary>
    public required ImmutableArray<StockCan> Cans { get; init; }

    /// <summary>The stock log, can by can, in the order of the log, impossible entries included.</summary>
    public required ImmutableArray<StockMove> Moves { get; init; }

    /// <summary>Units and pieces that the log names and that never were.</summary>
    public required ImmutableArray<StockStranger> Strangers { get; init; }

    /// <summary>Rolls without any stock to be found for them. Their film is in the shoot's account and in no lot.</summary>
    public required ImmutableArray<Roll> Unplaced { get; init; }

    /// <summary>The days on which film was loaded, exposed or unloaded, and all shooting days, in order.</summary>
    public required ImmutableArray<StockDay> Days { get; init; }

    /// <summary>How well the film was used, over the whole shoot.</summary>
    public required UseOfFilm Use { get; init; }

    /// <summary>The use of film by scene.</summary>
    public required ImmutableArray<UseOfPart> Scenes { get; init; }

    /// <summary>The use of film by lot.</summary>
    public required ImmutableArray<UseOfPart> ByLot { get; init; }

    /// <summary>The use of film by camera body.</summary>
    public required ImmutableArray<UseOfPart> Bodies { get; init; }

    /// <summary>The piece of a short end that a roll was loaded from; null for a whole unit, or where none is known.</summary>
    public StockShortEnd? ShortEndIn(Roll roll) => ShortEnds.FirstOrDefault(e => ReferenceEquals(e.UsedBy, roll));

    /// <summary>The short end of a roll, or its pieces where it was cut.</summary>
    public IEnumerable<StockShortEnd> PiecesOf(Roll parent) => ShortEnds.Where(e => ReferenceEquals(e.Parent, parent));

    /// <summary>The stock log of a short end or a piece of one, in order, impossible entries included.</summary>
    public IEnumerable<StockMove> MovesOf(StockShortEnd piece) =>
        Moves.Where(m => m.Piece == piece.Piece && ReferenceEquals(m.ShortEndOf, piece.Parent));

    /// <summary>Film in a short end at a time: as it was canned, less what was thrown away from it since.</summary>
    public Footage FilmIn(StockShortEnd piece, DateTime at) =>
        piece.Length - Sum(MovesOf(piece).Where(m => m is { IsOff: true, Counts: true } && m.At <= at), m => m.Film);

    /// <summary>The entry by which a short end was sent away, lost or damaged for good; null where it was not.</summary>
    public StockMove? WentAway(StockShortEnd piece) =>
        MovesOf(piece).LastOrDefault(m => m is { Counts: true, Lasts: true, Entry: StockSentAway or StockLost or StockDamaged });

    /// <summary>What a short end was cut into. A piece that was loaded by then is none of it.</summary>
    public IEnumerable<StockShortEnd> CutInto(StockMove cut) =>
        cut.ShortEndOf is { } whole ? PiecesOf(whole).Where(p => p.UsedBy is not { } roll || roll.Load.On.Value > cut.At) : [];

    /// <summary>How often the film of a roll went through an X-ray machine.</summary>
    public int XRaysOf(Roll roll) => Loads.FirstOrDefault(l => ReferenceEquals(l.Roll, roll))?.XRayed ?? 0;

    /// <summary>How often a unit that was not loaded yet went through an X-ray machine.</summary>
    public int XRaysOf(StockLot lot, int unit) => XRayedUnits.GetValueOrDefault((lot.Name.Value, unit));

    /// <summary>Film in a unit that was not loaded: less than was bought where some was cut off and the rest canned again.</summary>
    public Footage FilmIn(StockLot lot, int unit) =>
        Cans.FirstOrDefault(c => ReferenceEquals(c.Lot, lot) && c.Unit == unit)?.FilmOn(DateOnly.MaxValue) ?? lot.Length.Value;

    /// <summary>The lots for shooting.</summary>
    public IEnumerable<StockLotBook> Counted => Lots.Where(l => !l.IsPractice);

    /// <summary>The lots for practice.</summary>
    public IEnumerable<StockLotBook> Practice => Lots.Where(l => l.IsPractice);

    /// <summary>The lots for shooting, those of one stock together, in the order of their first lots.</summary>
    public IEnumerable<StockKind> Kinds =>
        from lot in Counted
        group lot by (lot.Lot.Stock.Value, lot.Lot.Index.Value) into lots
        select new StockKind(lots.Key.Item1, [.. lots]);

    /// <summary>The day itself, or else the last one before it on which film was exposed; null before the first.</summary>
    public StockDay? DayAt(DateOnly date) => Days.LastOrDefault(d => d.On == date || (d.On < date && d.Use.Tally.Exposed > Footage.Zero));

    /// <summary>Film to load: sealed units and short ends, without practice lots.</summary>
    public Footage OnHand => Sum(Counted, l => l.OnHand);

    /// <summary>Film that can still be shot: on hand, and in the cameras, without practice lots.</summary>
    public Footage Left => Sum(Counted, l => l.Left);

    /// <summary>The stock of a shoot.</summary>
    internal static StockBook Keep(ShootBook book)
    {
        var (placed, pieces) = StockPlacing.Place(book);
        var shortEnds = placed
            .Where(p => pieces.ContainsKey(p.Roll))
            .SelectMany(p => pieces[p.Roll].Select(piece => ShortEnd(p, piece, pieces[p.Roll].Length == 1)))
            .OrderBy(e => book.Production.Rolls.IndexOf(e.Parent))
            .ToImmutableArray();
        var xrays = new StockXRays(book.Production, placed, shortEnds);
        placed = [.. placed.Select(p => p with { XRayed = xrays.Of(p) })];
        shortEnds = [.. shortEnds.Select(e => e with { XRayed = xrays.Of(e) })];
        var cans = StockCans.Gather(book, placed, shortEnds);
        var lots = book
            .Production.Lots.Select(l =>
                LotOf(l, [.. placed.Where(p => ReferenceEquals(p.Lot, l))], [.. cans.Where(c => ReferenceEquals(c.Lot, l))])
            )
            .ToImmutableArray();
        var placedRolls = placed.Select(p => p.Roll).ToHashSet<Roll>(ReferenceEqualityComparer.Instance);
        return new StockBook
        {
            XRayed = xrays.Films(lots),
            XRayedUnits = lots.SelectMany(l => l.Sealed.Select(unit => (Unit: (l.Lot.Name.Value, unit), Passes: xrays.Of(l.Lot, unit))))
                .Where(u => u.Passes > 0)
                .DistinctBy(u => u.Unit)
                .ToImmutableDictionary(u => u.Unit, u => u.Passes),
            Scenes = UseOfFilm.By(book, Sharing.Scene),
            ByLot = UseOfFilm.By(book, Sharing.Lot),
            Bodies = UseOfFilm.By(book, Sharing.Body),
            Lots = lots,
            Loads = [.. placed.OrderBy(p => book.Production.Rolls.IndexOf(p.Roll))],
            ShortEnds =
            [
                .. cans.Where(c => c.ShortEnd is not null)
                    .Select(c =>
                        c.ShortEnd! with
                        {
                            OnHand = c.On(DateOnly.MaxValue) == StockPlace.Store ? c.FilmOn(DateOnly.MaxValue) : Footage.Zero,
                        }
                    ),
            ],
            Cans = cans,
            Moves = StockCans.Moves(book.Production, cans),
            Strangers = StockStranger.Find(book.Production, shortEnds),
            Unplaced = [.. book.Production.Rolls.Where(r => !r.IsPractice && !placedRolls.Contains(r))],
            Days = StockDays.Count(book, placed, shortEnds, cans),
            Use = UseOfFilm.Of(book),
        };
    }

    /// <summary>The sum of a length over some things.</summary>
    internal static Footage Sum<T>(IEnumerable<T> things, Func<T, Footage> length) =>
        things.Aggregate(Footage.Zero, (sum, thing) => sum + length(thing));

    static StockShortEnd ShortEnd(StockLoad parent, StockPiece piece, bool isWhole) =>
        new(parent.Roll, parent.Lot, piece.Film, parent.Out!.Value, piece.Roll)
        {
            Piece = piece.Number,
            IsWhole = isWhole,
            IsRecan = parent.Roll.IsUnshot,
            Moves = [.. piece.Moves.Select(m => m with { Piece = piece.Number })],
        };

    static StockLotBook LotOf(StockLot lot, List<StockLoad> placed, List<StockCan> cans)
    {
        var shot = placed.Where(p => !p.Roll.IsPractice).ToList();
        var practised = placed.Where(p => p.Roll.IsPractice).ToList();
        var stored = cans.Where(c => c.On(DateOnly.MaxValue) == StockPlace.Store).ToList();
        var waiting = stored.Where(c => c.ShortEnd is not null).ToList();
        var moves = cans.SelectMany(c => c.Moves).Where(m => m.Counts).ToList();
        int Units(Func<StockEntry, bool> of) => moves.Count(m => m.Unit is not null && of(m.Entry));
        Footage Film(Func<StockEntry, bool> of) => Sum(moves.Where(m => of(m.Entry)), m => m.Film);
        var untouched = lot.Units.Value - cans.Count(c => c.Unit <= lot.Units.Value);
        return new StockLotBook
        {
            Lot = lot,
            Sealed =
            [
                .. Enumerable
                    .Range(1, lot.Units.Value)
                    .Except(cans.Select(c => c.Unit).OfType<int>())
                    .Union(stored.Select(c => c.Unit).OfType<int>())
                    .Order(),
            ],
            UnitsRecanned = stored.Count(c => c.ShortEnd is null && c.Moves.Any(m => m is { Counts: true, Entry: StockRecanned })),
            UnitsCame = Units(e => e is StockCame),
            UnitsSentAway = Units(e => e is StockSentAway),
            UnitsLost = Units(e => e is StockLost or StockDamaged),
            UnitsLoaded = shot.Count(p => p.IsUnit),
            UnitsPractised = practised.Count(p => p.IsUnit),
            Came = Film(e => e is StockCame),
            SentAway = Film(e => e is StockSentAway),
            Lost = Film(e => e is StockLost or StockDamaged or StockRecanned or StockSplit),
            Unopened =
                new Footage(lot.Length.Value.Frames * untouched)
                + Sum(stored.Where(c => c.ShortEnd is null), c => c.FilmOn(DateOnly.MaxValue)),
            Loaded = Sum(shot.Where(p => p.IsUnit), p => p.Held),
            Remeasured = Sum(placed, p => p.Held - p.Said),
            Shot = shot.Aggregate(Tally.Empty, (sum, p) => sum + (p.Book?.Tally ?? Tally.Empty)),
            ShortEnds = Sum(waiting, c => c.FilmOn(DateOnly.MaxValue)),
            ShortEndCans = waiting.Count,
            InCamera = Sum(shot.Where(p => p.Roll.Unload is null), p => p.Book?.Tally.ShortEnd ?? Footage.Zero),
            Practice = Sum(practised, p => p.Held),
            Unread = Sum(shot.Where(p => p.Book is null), p => p.Held),
        };
    }
}
