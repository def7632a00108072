using System.Collections.Immutable;
using Spoolbook.Film;

namespace Spoolbook.Shoot.Forecasts;

/// <summary>
/// How much film the shots left on the list will need, and whether the stock lasts. Of a hundred shoots drawn at random
/// from the shots so far, with the seed <see cref="Seed"/>, so many need at most each figure. FORECAST.md has the
/// method, and how often the figures held in simulated shoots. All stocks count together. The shoots are drawn when a
/// figure that needs them is first read.
/// </summary>
public sealed class FilmForecast
{
    /// <summary>Finished shots that make an average useful, unless the production sets another number.</summary>
    public const long UsualShotsToGoOn = 5;

    /// <summary>The seed: the same input gives the same figures.</summary>
    public const int Seed = 16;

    /// <summary>Shoots drawn.</summary>
    public const int Draws = 4000;

    /// <summary>The percentages that figures are given for.</summary>
    public static ImmutableArray<int> Percents { get; } = [50, 80, 95];

    // Nobody plans a day beyond that.
    const int MostDays = 400;

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

    /// <summary>Frames of stock for a shot at the plain average, with the loss rate; null without a finished shot.</summary>
    public Ratio? PlainShot =>
        Input.Finished.IsEmpty
            ? null
            : new Ratio(Input.Finished.Sum(s => s.Film.Frames), Input.Finished.Length) * (Ratio.One + Input.LossRate);

    /// <summary>
    /// Film of stock for the shots left at the plain average, with the loss rate, rounded up to a frame; null without a
    /// shot list or a finished shot.
    /// </summary>
    public Footage? Plain => Input.ShotsLeft is { } left && PlainShot is { } shot ? new Footage((long)(shot * left).Ceiling()) : null;

    /// <summary>What the stock lacks of <see cref="Plain"/>; null where that is.</summary>
    public Footage? PlainLacking => Plain is { } plain ? Beyond(plain, Input.Stock) : null;

    /// <summary>How many of the shots left the stock covers completely at the plain average; null where <see cref="Plain"/> is.</summary>
    public int? PlainReach =>
        PlainLacking is not { } lacking ? null
        : lacking == Footage.Zero ? Input.ShotsLeft
        : (int)(Input.Stock.Frames / PlainShot!.Value).Floor();

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
            [.. Percents.Select(p => Figure(p, drawn.Enough(last, p), input))],
            new Ratio(drawn.Lasting(last, input.Stock), drawn.Count),
            [
                .. days.Select(
                    (d, i) =>
                        new ForecastDay(
                            d.Ahead,
                            d.On,
                            d.Shots,
                            [.. Percents.Select(p => drawn.Enough(i, p))],
                            new Ratio(drawn.Lasting(i, input.Stock), drawn.Count)
                        )
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

    static ForecastFigure Figure(int percent, Footage needed, ForecastInput input)
    {
        var lacking = Beyond(needed, input.Stock);
        return new ForecastFigure(percent, needed, lacking, Units(needed, input.Unit), Units(lacking, input.Unit));
    }

    static Footage Beyond(Footage needed, Footage stock) => Footage.Max(Footage.Zero, needed - stock);

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
