using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Shoot.Forecasts;

/// <summary>
/// How much film the shots left on the list will need, and whether the stock lasts. Of a hundred shoots drawn at random
/// from the shots so far, with the seed <see cref="Seed"/>, so many need at most each figure. FORECAST.md has the
/// method, and how often the figures held in simulated shoots. Only stock that suits a shot's light counts for it. The
/// shoots are drawn when a figure that needs them is first read.
/// </summary>
public sealed class FilmForecast
{
    /// <summary>Finished shots that make an average useful, unless the production sets another number.</summary>
    public const long UsualShotsToGoOn = 5;

    /// <summary>The seed: the same input gives the same figures.</summary>
    public const int Seed = 16;

    /// <summary>Shoots drawn.</summary>
    public const int Draws = 4000;

    /// <summary>
    /// The surest that a chance can be after so many finished shots: how often stock that was enough in 99 of 100 draws
    /// was enough in simulated shoots (the second table in FORECAST.md), in whole percent.
    /// </summary>
    public static Ratio Surest(int finished) => new(finished < FewestToBeSurer ? 96 : 97, 100);

    /// <summary>The percentages that figures are given for.</summary>
    public static ImmutableArray<int> Percents { get; } = [50, 80, 95];

    /// <summary>The percentage to order by: sure enough, and little is left over.</summary>
    public const int Usual = 80;

    // Nobody plans a day beyond that.
    const int MostDays = 400;

    const int FewestToBeSurer = 8;

    // One shot has no spread to draw from.
    const long FewestWithSpread = 2;

    readonly Lazy<Drawn> _drawn;

    FilmForecast(ForecastInput input, int draws)
    {
        (Input, Basis) = (input, BasisOf(input));
        _drawn = new(() => Basis == ForecastBasis.Drawn ? Draw(input, draws) : Drawn.Nothing);
    }

    /// <summary>Its input.</summary>
    public ForecastInput Input { get; }

    /// <summary>How much it can give.</summary>
    public ForecastBasis Basis { get; }

    /// <summary>Finished shots below which nothing is drawn: the shots to go on, and at least two.</summary>
    public long FewestToDraw => FewestOf(Input);

    /// <summary>Whether enough shots are finished for a useful average.</summary>
    public bool HasEnoughToGoOn => Input.Finished.Length >= Input.ShotsToGoOn;

    /// <summary>
    /// Frames of stock for a shot: the plain average with the loss rate, or what the list plans for a shot left where
    /// that is more; null without a finished shot.
    /// </summary>
    public Ratio? PlainShot =>
        Input.Finished.IsEmpty ? null
        : Input is { Planned: { } planned, ShotsLeft: > 0 and var left } && planned / left is var shot && shot > Input.UsualShot ? shot
        : Input.UsualShot;

    /// <summary>
    /// Film of stock for the shots left at <see cref="PlainShot"/>, rounded up to a frame; null without a shot list or a
    /// finished shot.
    /// </summary>
    public Footage? Plain => PlainOf(Input.ShotsLeft);

    /// <summary>What the stock lacks of <see cref="Plain"/>, counting only stock that suits a shot's light; null where that is.</summary>
    public Footage? PlainLacking => PlainOrders is { } orders ? StockBook.Sum(orders, o => o.Film) : null;

    /// <summary>What to order at the plain average, stock by stock; null where <see cref="Plain"/> is.</summary>
    public ImmutableArray<StockLacking>? PlainOrders => Plain is null ? null : Orders(PlainLackingUpTo(Input.ShotsLeft ?? 0), Input);

    /// <summary>
    /// How many of the shots left, in the list's order, the stock covers completely at the plain average; null where
    /// <see cref="Plain"/> is.
    /// </summary>
    public int? PlainReach =>
        Plain is null
            ? null
            : Enumerable.Range(1, Input.ShotsLeft ?? 0).TakeWhile(n => PlainLackingUpTo(n).All(l => l == Footage.Zero)).Count();

    /// <summary>The kind of the first shot left without film at the plain average; null where the stock lasts, or any will do.</summary>
    public ShotKind? PlainShortKind =>
        PlainReach is { } reach && reach < Input.ToCome.Length && !Input.Kinds.IsEmpty ? Input.Kinds[Input.ToCome[reach].Kind] : null;

    /// <summary>Film of the stock that suits a kind of shots.</summary>
    public Footage StockFor(ShotKind kind) => StockBook.Sum(kind.Pools, p => Input.Pools[p].Film);

    /// <summary>The shots left of a kind.</summary>
    public int ShotsOf(ShotKind kind) => Input.ToCome.Count(s => ReferenceEquals(Input.Kinds[s.Kind], kind));

    /// <summary>Film of stock for the shots left of a kind at <see cref="PlainShot"/>; null without a finished shot.</summary>
    public Footage? PlainFor(ShotKind kind) => PlainOf(ShotsOf(kind));

    /// <summary>The figures, in the order of <see cref="Percents"/>; empty where nothing was drawn.</summary>
    public ImmutableArray<ForecastFigure> Figures => _drawn.Value.Figures;

    /// <summary>The part of all draws in which the stock lasts for every shot left; null where nothing was drawn.</summary>
    public Ratio? Lasts => _drawn.Value.Lasts;

    /// <summary>The shooting days to come, while shots are left for them; empty where nothing was drawn.</summary>
    public ImmutableArray<ForecastDay> Days => _drawn.Value.Days;

    /// <summary>The first day by whose evening the stock has run out in at least half of all draws; null where it lasts.</summary>
    public ForecastDay? RunsOut => FirstBelow(new Ratio(1, 2));

    /// <summary>The first day by whose evening the stock has run out in at least a fifth of all draws; null where it lasts.</summary>
    public ForecastDay? MayRunOut => FirstBelow(new Ratio(4, 5));

    /// <summary>The forecast from some input.</summary>
    /// <param name="draws">Shoots to draw; from 100.</param>
    internal static FilmForecast Compute(ForecastInput input, int draws = Draws)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(draws, 100);
        return new FilmForecast(input, draws);
    }

    static Drawn Draw(ForecastInput input, int draws)
    {
        var days = Spread(input);
        var drawn = new ForecastDraws(input, [.. days.Select(d => d.Shots)], Seed, draws);
        var last = days.Count - 1;
        return new Drawn(
            [.. Percents.Select(p => Figure(p, drawn.Enough(last, p), drawn.LackingAt(p), input))],
            Chance(drawn, last, input),
            [
                .. days.Select(
                    (d, i) =>
                        new ForecastDay(d.Ahead, d.On, d.Shots, [.. Percents.Select(p => drawn.Enough(i, p))], Chance(drawn, i, input))
                ),
            ]
        );
    }

    static long FewestOf(ForecastInput input) => Math.Max(input.ShotsToGoOn, FewestWithSpread);

    static ForecastBasis BasisOf(ForecastInput input) =>
        input switch
        {
            { ShotsLeft: null } => ForecastBasis.NoList,
            { ShotsLeft: 0 } => ForecastBasis.NothingLeft,
            { Finished.Length: 0 } => ForecastBasis.NothingFinished,
            _ when input.Finished.Length < FewestOf(input) => ForecastBasis.TooFew,
            _ => ForecastBasis.Drawn,
        };

    static ForecastFigure Figure(int percent, Footage needed, IEnumerable<Footage> lacking, ForecastInput input)
    {
        var orders = Orders(lacking, input);
        return new ForecastFigure(percent, needed, StockBook.Sum(orders, o => o.Film), Units(needed, input.Unit), orders);
    }

    static Ratio Chance(ForecastDraws drawn, int point, ForecastInput input)
    {
        var (part, most) = (new Ratio(drawn.Lasting(point), drawn.Count), Surest(input.Finished.Length));
        return part < most ? part : most;
    }

    // Two kinds of shots may want the same stock.
    static ImmutableArray<StockLacking> Orders(IEnumerable<Footage> lacking, ForecastInput input) =>
        [
            .. lacking
                .Index()
                .Select(l =>
                    (Order: input.Kinds.IsEmpty ? new StockToOrder(null, null, input.Unit, []) : input.Kinds[l.Index].Order, Film: l.Item)
                )
                .GroupBy(l => (l.Order.Stock, l.Order.Balance, l.Order.Unit))
                .Select(g => StockLacking.Of(g.First().Order, StockBook.Sum(g, l => l.Film)))
                .Where(l => l.Film > Footage.Zero),
        ];

    Footage? PlainOf(int? shots) => shots is { } n && PlainShot is { } shot ? new Footage((long)(shot * n).Ceiling()) : null;

    IEnumerable<Footage> PlainLackingUpTo(int shots)
    {
        var kinds = Input.ToCome.Take(shots).CountBy(s => s.Kind).ToDictionary();
        long[] needed =
            Input.Kinds.Length < 2
                ? [PlainOf(shots)!.Value.Frames]
                : [.. Enumerable.Range(0, Input.Kinds.Length).Select(k => PlainOf(kinds.GetValueOrDefault(k))!.Value.Frames)];
        var lacking = new long[needed.Length];
        new StockSupply(Input).FindLacking(needed, lacking);
        return lacking.Select(l => new Footage(l));
    }

    static long? Units(Footage film, Footage? unit) => unit is { } length ? (long)new Ratio(film.Frames, length.Frames).Ceiling() : null;

    // Evenly over the listed days; without a day left on the list, at the pace so far.
    static List<(int Ahead, DateOnly? On, int Shots)> Spread(ForecastInput input)
    {
        var left = input.ShotsLeft ?? 0;
        var listed = input.DaysToCome;
        var pace = Math.Max(1, (int)new Ratio(input.Finished.Length, Math.Max(1, input.DaysShot)).Round());
        var count = Math.Min(listed.IsEmpty ? ((left - 1) / pace) + 1 : listed.Length, MostDays);
        return
        [
            .. Enumerable
                .Range(1, count)
                .Select(day =>
                    (
                        day,
                        listed.IsEmpty ? (DateOnly?)null : listed[day - 1],
                        day == count ? left
                        : listed.IsEmpty ? day * pace
                        : (int)new Ratio((long)left * day, count).Round()
                    )
                ),
        ];
    }

    ForecastDay? FirstBelow(Ratio part) => Days.FirstOrDefault(d => d.Lasts <= part);

    // What takes drawing.
    sealed record Drawn(ImmutableArray<ForecastFigure> Figures, Ratio? Lasts, ImmutableArray<ForecastDay> Days)
    {
        public static readonly Drawn Nothing = new([], null, []);
    }
}
