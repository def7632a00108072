using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
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

    /// <summary>The shots left, in the list's order; empty where nothing but their number is known.</summary>
    public ImmutableArray<ShotToCome> ToCome { get; init; } = [];

    /// <summary>
    /// The kinds of the shots left, by the light that says which stock may serve; those that fewest stocks suit first.
    /// Empty where any stock will do.
    /// </summary>
    public ImmutableArray<ShotKind> Kinds { get; init; } = [];

    /// <summary><see cref="Stock"/> by colour balance; empty where any stock will do.</summary>
    public ImmutableArray<StockPool> Pools { get; init; } = [];

    /// <summary>The shoot's own ratio, film exposed to good film; null before the first good take.</summary>
    public Ratio? OwnRatio { get; init; }

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

    /// <summary>
    /// Film of stock for the shots left by the list: the planned screen time of each at <see cref="OwnRatio"/>, and the
    /// average with the losses for a shot without one. Null where no screen time is planned, or no take is good.
    /// </summary>
    public Ratio? Planned =>
        OwnRatio is { } ratio && Average is not null && ToCome.Any(s => s.Screen is not null)
            ? ToCome.Aggregate(Ratio.Zero, (sum, s) => sum + (s.Screen is { } film ? ratio * film.Frames : UsualShot))
            : null;

    /// <summary>Frames of stock for an average finished shot, with the losses; zero without one.</summary>
    public Ratio UsualShot =>
        Finished.IsEmpty ? Ratio.Zero : new Ratio(Finished.Sum(s => s.Film.Frames), Finished.Length) * (Ratio.One + LossRate);

    /// <summary>Gathers the input for a shoot.</summary>
    /// <param name="balanceMireds">Mireds that film, filter and light may be apart: the tolerance <c>balance-mireds</c>.</param>
    internal static ForecastInput Gather(ShootBook book, StockBook stock, CoverageBook coverage, double balanceMireds)
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
        var pools = stock
            .Counted.GroupBy(l => l.Lot.Balance)
            .OrderBy(g => g.Key)
            .Select(g => new StockPool(
                g.Key,
                Footage.Max(
                    Footage.Zero,
                    StockBook.Sum(g, l => l.Left) - StockBook.Sum(tooShort.Where(e => e.Lot.Balance == g.Key), e => e.OnHand)
                )
            ))
            .ToImmutableArray();
        var kinds = KindsOf(production, stock, coverage.Left ?? [], pools, balanceMireds);
        return new ForecastInput
        {
            ToCome = [.. (coverage.Left ?? []).Select(s => ToComeOf(s, production, kinds))],
            Kinds = kinds,
            Pools = pools,
            OwnRatio = stock.Use.ExposedToGood,
            Finished = [.. coverage.Got.Select(s => new FinishedShot(s.Name, s.Film))],
            Lost = [.. beside.Select(b => b.Film + StockBook.Sum(tooShort.Where(e => ReferenceEquals(e.Parent, b.Roll)), e => e.OnHand))],
            FilmOfShots = StockBook.Sum(rolls, r => OfShots(r, shots)),
            ShotsLeft = coverage.Left?.Length,
            Stock = Footage.Max(Footage.Zero, stock.Left - StockBook.Sum(tooShort, e => e.OnHand)),
            TooShort = StockBook.Sum(tooShort, e => e.OnHand),
            Unit = UnitOf(stock.Counted),
            LastDay = lastDay,
            DaysShot = stock.Days.Count(d => d.Use.Takes > 0),
            DaysToCome = [.. production.Days.Select(d => d.On.Value).Where(d => lastDay is null || d > lastDay).Distinct().Order()],
        };
    }

    static Footage OfShots(RollBook roll, HashSet<string> shots) =>
        StockBook.Sum(roll.Strip.Segments.Where(s => s.Owner is { Take.IsTest: false } owner && shots.Contains(owner.Take.ShotName)), s =>
            s.Span.Length
        );

    static ShotToCome ToComeOf(CoveredShot shot, Production production, ImmutableArray<ShotKind> kinds) =>
        new(
            shot.Name,
            kinds.Select(k => k.Light).ToList().IndexOf(LightOf(shot)),
            shot.Planned?.Screen is { Value.Sign: > 0 } screen
                ? new Footage((long)(screen.Value * production.ProjectedAt.FramesPerSecond).Ceiling())
                : null
        );

    // Mixed light is anybody's: no stock is right for it.
    static SubjectLight? LightOf(CoveredShot shot) => shot.Planned?.Light?.Value is { } light && light != SubjectLight.Mixed ? light : null;

    static ImmutableArray<ShotKind> KindsOf(
        Production production,
        StockBook stock,
        ImmutableArray<CoveredShot> left,
        ImmutableArray<StockPool> pools,
        double balanceMireds
    ) =>
        [
            .. left.Select(LightOf)
                .Distinct()
                .Select(light =>
                {
                    bool Serves(ColourBalance balance) => LightMatch.Serves(production, balance, light, balanceMireds);
                    return new ShotKind(
                        light,
                        [.. pools.Index().Where(p => Serves(p.Item.Balance)).Select(p => p.Index)],
                        OrderFor(light, [.. stock.Counted], Serves)
                    );
                })
                .OrderBy(k => k.Pools.Length)
                .ThenBy(k => k.Light is null),
        ];

    // The stock made for the light; where none came, one that serves in it all the same.
    static StockToOrder OrderFor(SubjectLight? light, List<StockLotBook> lots, Func<ColourBalance, bool> serves)
    {
        ColourBalance? made = light switch
        {
            SubjectLight.Daylight => ColourBalance.Daylight,
            SubjectLight.Tungsten => ColourBalance.Tungsten,
            _ => null,
        };
        var right = lots.Where(l => made is null || l.Lot.Balance == made).ToList();
        var fit = right.Count > 0 ? right : [.. lots.Where(l => serves(l.Lot.Balance))];
        var names = fit.Select(l => l.Lot.Stock.Value).Distinct(StringComparer.Ordinal).ToList();
        var name = made is null && names.Count > 1 ? null : names.MaxBy(n => Units(fit.Where(l => l.Lot.Stock.Value == n)));
        ImmutableArray<StockLotBook> chosen = [.. fit.Where(l => name is null || l.Lot.Stock.Value == name)];
        return new StockToOrder(name, made, UnitOf(chosen.IsEmpty ? lots : chosen), chosen);
    }

    static long Units(IEnumerable<StockLotBook> lots) => lots.Sum(l => (long)l.UnitsReceived);

    // An average loading loss and an average take. Nobody loads a short end below it.
    static Footage Usual(IEnumerable<Footage> lost, List<Layer> takes)
    {
        static long Average(IEnumerable<long> frames) => (long)frames.DefaultIfEmpty(0).Average();
        return new Footage(Average(lost.Select(l => l.Frames)) + Average(takes.Select(t => t.Span.Length.Frames)));
    }

    static Footage? UnitOf(IEnumerable<StockLotBook> lots) =>
        lots.GroupBy(l => l.Lot.Length.Value)
            .Where(g => g.Key > Footage.Zero)
            .OrderByDescending(Units)
            .ThenByDescending(g => g.Key)
            .Select(g => (Footage?)g.Key)
            .FirstOrDefault();
}
