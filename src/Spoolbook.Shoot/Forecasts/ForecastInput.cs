using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Shoot.Forecasts;

/// <summary>The input of a forecast: what was shot, what was lost outside takes, and what is left to shoot and to shoot with.</summary>
public sealed record ForecastInput
{
    /// <summary>The shots with a good take, on the list or not, in the order in which their first good take was shot.</summary>
    public required ImmutableArray<FinishedShot> Finished { get; init; }

    /// <summary>
    /// For each unloaded roll, the film outside takes of shots that are got or listed: head, tail, gaps, run-off, fog,
    /// tests, ends thrown away, and a short end too short to use. Before any roll is unloaded, what the rolls in the
    /// cameras lost so far.
    /// </summary>
    public required ImmutableArray<Footage> Lost { get; init; }

    /// <summary>Film of shots on the same rolls.</summary>
    public required Footage FilmOfShots { get; init; }

    /// <summary>Listed shots without a good take; null without a shot list, or where it could not be read completely.</summary>
    public required int? ShotsLeft { get; init; }

    /// <summary>
    /// Film that can still be shot: sealed units, film in the cameras, and short ends that are long enough; without
    /// practice lots.
    /// </summary>
    public required Footage Stock { get; init; }

    /// <summary>Short ends in their cans that are too short for a usual take after a usual loading loss.</summary>
    public Footage TooShort { get; init; }

    /// <summary>The commonest length of the units received; null where no stock came.</summary>
    public Footage? Unit { get; init; }

    /// <summary>The last day on which film was loaded or shot; null before the first.</summary>
    public DateOnly? LastDay { get; init; }

    /// <summary>Days with a take.</summary>
    public int DaysShot { get; init; }

    /// <summary>The shooting days after <see cref="LastDay"/>, in order.</summary>
    public ImmutableArray<DateOnly> DaysToCome { get; init; } = [];

    /// <summary>Finished shots below which their average is no use.</summary>
    public long ShotsToGoOn { get; init; } = FilmForecast.UsualShotsToGoOn;

    /// <summary>Film of an average finished shot, to the nearest frame; null without one.</summary>
    public Footage? Average =>
        Finished.IsEmpty ? null : new Footage((long)new Ratio(Finished.Sum(s => s.Film.Frames), Finished.Length).Round());

    /// <summary>Film lost to film of shots: the loss for each foot of a shot; zero where it is unknown.</summary>
    public Ratio LossRate => FilmOfShots == Footage.Zero ? Ratio.Zero : new Ratio(Lost.Sum(l => l.Frames), FilmOfShots.Frames);

    /// <summary>Gathers the input for a shoot.</summary>
    internal static ForecastInput Gather(ShootBook book, StockBook stock, CoverageBook coverage)
    {
        var production = book.Production;
        var takes = book.Counted.SelectMany(r => r.Layers).ToList();
        var shots = coverage.GotOrListed.Select(s => s.Name).ToHashSet(StringComparer.Ordinal);

        var takenOut = book.Counted.Where(r => r.Roll.Unload is not null).ToList();
        var rolls = takenOut.Count > 0 ? takenOut : [.. book.Counted];
        var beside = rolls.Select(r => (r.Roll, Film: r.Tally.Exposed - OfShots(r, shots))).ToList();
        var usual = Usual(beside.Select(b => b.Film), takes);
        var tooShort = stock
            .ShortEnds.Where(e => e.OnHand > Footage.Zero && !(e.Lot.Practice?.Value ?? false) && e.OnHand < usual)
            .ToList();
        var shotOn = stock.Days.Where(d => d.RollsLoaded > 0 || d.Use.Takes > 0).Select(d => d.On).ToList();
        DateOnly? lastDay = shotOn.Count > 0 ? shotOn[^1] : null;
        return new ForecastInput
        {
            Finished = [.. coverage.Got.Select(s => new FinishedShot(s.Name, s.Film))],
            Lost = [.. beside.Select(b => b.Film + StockBook.Sum(tooShort.Where(e => ReferenceEquals(e.Parent, b.Roll)), e => e.OnHand))],
            FilmOfShots = StockBook.Sum(rolls, r => OfShots(r, shots)),
            ShotsLeft = coverage.Left?.Length,
            Stock = Footage.Max(Footage.Zero, stock.Left - StockBook.Sum(tooShort, e => e.OnHand)),
            TooShort = StockBook.Sum(tooShort, e => e.OnHand),
            Unit = UnitOf(stock),
            LastDay = lastDay,
            DaysShot = stock.Days.Count(d => d.Use.Takes > 0),
            DaysToCome = [.. production.Days.Select(d => d.On.Value).Where(d => lastDay is null || d > lastDay).Distinct().Order()],
        };
    }

    static Footage OfShots(RollBook roll, HashSet<string> shots) =>
        StockBook.Sum(roll.Strip.Segments.Where(s => s.Owner is { Take.IsTest: false } owner && shots.Contains(owner.Take.ShotName)), s =>
            s.Span.Length
        );

    // An average loading loss and an average take. Nobody loads a short end below it.
    static Footage Usual(IEnumerable<Footage> lost, List<Layer> takes)
    {
        static long Average(IEnumerable<long> frames) => (long)frames.DefaultIfEmpty(0).Average();
        return new Footage(Average(lost.Select(l => l.Frames)) + Average(takes.Select(t => t.Span.Length.Frames)));
    }

    static Footage? UnitOf(StockBook stock) =>
        stock
            .Counted.GroupBy(l => l.Lot.Length.Value)
            .Where(g => g.Key > Footage.Zero)
            .OrderByDescending(g => g.Sum(l => (long)l.UnitsReceived))
            .ThenByDescending(g => g.Key)
            .Select(g => (Footage?)g.Key)
            .FirstOrDefault();
}
