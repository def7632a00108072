using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Shoot.Accounts;

/// <summary>Follows the stock through the days.</summary>
sealed class StockDays
{
    readonly ShootBook _book;
    readonly ILookup<DateOnly, Segment> _film;
    readonly ILookup<DateOnly, Layer> _takes;
    readonly Dictionary<Roll, Strip> _strips = new(ReferenceEqualityComparer.Instance);
    readonly List<StockLoad> _placed;
    readonly List<StockShortEnd> _shortEnds;
    readonly List<StockCan> _cans;
    readonly Footage _untouched;

    StockDays(ShootBook book, IEnumerable<StockLoad> placed, IEnumerable<StockShortEnd> shortEnds, IEnumerable<StockCan> cans)
    {
        _book = book;
        _film = book.Counted.SelectMany(r => r.Strip.Segments).ToLookup(s => s.Custody.On);
        foreach (var roll in book.Counted)
        {
            _strips[roll.Roll] = roll.Strip;
        }

        _takes = book.Counted.SelectMany(r => r.Layers).ToLookup(l => l.On);
        _placed = [.. placed.Where(p => Counts(p.Lot))];
        _shortEnds = [.. shortEnds.Where(e => Counts(e.Lot))];
        _cans = [.. cans.Where(c => Counts(c.Lot))];
        _untouched = StockBook.Sum(book.Production.Lots.Where(Counts), Untouched);
    }

    public static ImmutableArray<StockDay> Count(
        ShootBook book,
        IEnumerable<StockLoad> placed,
        IEnumerable<StockShortEnd> shortEnds,
        IEnumerable<StockCan> cans
    )
    {
        var days = new StockDays(book, placed, shortEnds, cans);
        var toDate = Tally.Empty;
        var all = ImmutableArray.CreateBuilder<StockDay>();
        foreach (var date in days.Dates())
        {
            var tally = Tally.Of(days._film[date]);
            toDate += tally;
            all.Add(days.Make(date, tally, toDate));
        }

        return all.DrainToImmutable();
    }

    static bool Counts(StockLot lot) => !(lot.Practice?.Value ?? false);

    // A unit that nothing happened to has no can in the book.
    Footage Untouched(StockLot lot) =>
        new(lot.Length.Value.Frames * (lot.Units.Value - _cans.Count(c => ReferenceEquals(c.Lot, lot) && c.Unit <= lot.Units.Value)));

    SortedSet<DateOnly> Dates() =>
        [
            .. _book.Production.Days.Select(d => d.On.Value),
            .. _film.Select(g => g.Key),
            .. _takes.Select(g => g.Key),
            .. _placed.Select(p => p.On),
            .. _placed.Select(p => p.Out).OfType<DateOnly>(),
            .. _book.Counted.Select(r => r.Walk.Loading.Day),
            .. Moves().Select(m => m.On),
        ];

    StockDay Make(DateOnly date, Tally tally, Tally toDate)
    {
        var loaded = _book.Counted.Where(r => r.Walk.Loading.Day == date).ToList();
        return new StockDay
        {
            On = date,
            Day = _book.Production.Days.FirstOrDefault(d => d.On.Value == date),
            Loaded = StockBook.Sum(loaded, r => r.Strip.Loaded),
            RollsLoaded = loaded.Count,
            Use = UseOfFilm.Of(tally, _takes[date], _book.Production.ProjectedAt),
            Units = _book.Production.Days.Count(d => d.On.Value == date) > 1 ? UnitsOn(date, loaded) : [],
            ToDate = toDate,
            ShortEndsMade = StockBook.Sum(_shortEnds.Where(e => e.Made == date), e => e.Length),
            Came = StockBook.Sum(Moves().Where(m => m.On == date && m.Entry is StockCame), m => m.Change),
            Went = StockBook.Sum(Moves().Where(m => m.On == date && m.Entry is not StockCame), m => Footage.Zero - m.Change),
            OnHand = _untouched + StockBook.Sum(_cans.Where(c => c.On(date) == StockPlace.Store), c => c.FilmOn(date)),
            InCamera = StockBook.Sum(_placed.Where(p => InCamera(p, date)), p => NotExposed(p.Roll, date)),
        };
    }

    // Each unit has a camera of its own; nobody writes which of the day's entries is whose.
    ImmutableArray<StockUnit> UnitsOn(DateOnly date, List<RollBook> loaded)
    {
        var made = _shortEnds.Where(e => e.Made == date).ToLookup(e => BodyAtTheEnd(e.Parent), e => e.Length);
        var film = _film[date].ToLookup(s => s.Custody.Body);
        var takes = _takes[date].ToLookup(l => l.Body);
        var rolls = loaded.ToLookup(r => r.Walk.Loading.After.Body);
        return
        [
            .. new[] { film.Select(g => g.Key), takes.Select(g => g.Key), rolls.Select(g => g.Key), made.Select(g => g.Key) }
                .SelectMany(bodies => bodies)
                .Distinct(StringComparer.Ordinal)
                .OrderBy(body => body, NameOrder.Instance)
                .Select(body => new StockUnit(
                    body,
                    StockBook.Sum(rolls[body], r => r.Strip.Loaded),
                    StockBook.Sum(made[body], length => length),
                    UseOfFilm.Of(Tally.Of(film[body]), takes[body], _book.Production.ProjectedAt)
                )),
        ];
    }

    string? BodyAtTheEnd(Roll roll) => _book.Counted.FirstOrDefault(r => ReferenceEquals(r.Roll, roll))?.Walk.End.Body;

    IEnumerable<StockMove> Moves() => _cans.SelectMany(c => c.Moves).Where(m => m.Counts);

    static bool InCamera(StockLoad load, DateOnly evening) =>
        !load.Roll.IsPractice && load.On <= evening && (load.Out is not { } taken || taken > evening);

    // The roll's whole length, less what was exposed of it so far.
    Footage NotExposed(Roll roll, DateOnly evening) =>
        _strips.TryGetValue(roll, out var strip)
            ? StockBook.Sum(strip.Segments.Where(s => s.Account == Account.ShortEnd || s.Custody.On > evening), s => s.Span.Length)
            : Footage.Zero;
}
