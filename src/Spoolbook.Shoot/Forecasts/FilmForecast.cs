using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Shoot.Forecasts;

/// <summary>How much a forecast can say.</summary>
public enum ForecastBasis
{
    /// <summary>Nothing: no shots are listed, or the list could not be read whole.</summary>
    NoList,

    /// <summary>Every listed shot has a good take.</summary>
    NothingLeft,

    /// <summary>Nothing: no shot is finished yet.</summary>
    NothingFinished,

    /// <summary>The plain average only: fewer than <see cref="FilmForecast.Fewest"/> shots are finished.</summary>
    TooFew,

    /// <summary>All of it.</summary>
    Drawn,
}

/// <summary>Film that is enough in so many of a hundred cases.</summary>
/// <param name="Percent">50, 80 or 95.</param>
/// <param name="Needed">Film of stock for the shots left, with what is lost beside the takes.</param>
/// <param name="Lacking">What the stock lacks of it; no film where it lasts.</param>
/// <param name="Units">Whole units that hold <paramref name="Needed"/>; null where no unit's length is known.</param>
/// <param name="UnitsToOrder">Whole units that hold <paramref name="Lacking"/>; null where no unit's length is known.</param>
public sealed record ForecastFigure(int Percent, Footage Needed, Footage Lacking, long? Units, long? UnitsToOrder);

/// <summary>What is likely by the evening of a shooting day to come.</summary>
/// <param name="Ahead">Which shooting day from now; from 1.</param>
/// <param name="On">Its date; null beyond the days that are listed.</param>
/// <param name="Shots">Shots of those left that should be got by then.</param>
/// <param name="Needed">Film of stock used by then: in 50, 80 and 95 of a hundred cases it is enough.</param>
/// <param name="Lasts">The part of all cases in which the stock has lasted until then.</param>
public sealed record ForecastDay(int Ahead, DateOnly? On, int Shots, ImmutableArray<Footage> Needed, Ratio Lasts);

/// <summary>
/// How much film the shots left on the list will need, and whether the stock lasts. Of a hundred shoots drawn by lot from
/// the shots so far, with the seed <see cref="Seed"/>, so many need no more than each figure; FORECAST.md tells the method,
/// and how often the figures held in simulated shoots. All stocks are counted together.
/// </summary>
public sealed record FilmForecast
{
    /// <summary>Finished shots below which nothing is drawn.</summary>
    public const int Fewest = 5;

    /// <summary>What the numbers are drawn from: the same input gives the same figures.</summary>
    public const int Seed = 16;

    /// <summary>Shoots drawn.</summary>
    public const int Draws = 4000;

    /// <summary>The percentages that figures are given for.</summary>
    public static ImmutableArray<int> Percents { get; } = [50, 80, 95];

    // Beyond that nobody plans a day.
    const int MostDays = 400;

    /// <summary>What it goes by.</summary>
    public required ForecastGround Ground { get; init; }

    /// <summary>How much it can say.</summary>
    public required ForecastBasis Basis { get; init; }

    /// <summary>
    /// Film of stock for the shots left at the plain average, with the loss rate, rounded up to a frame; null without a list or a finished
    /// shot.
    /// </summary>
    public Footage? Plain { get; init; }

    /// <summary>What the stock lacks of <see cref="Plain"/>; null where that is.</summary>
    public Footage? PlainLacking => Plain is { } plain ? Beyond(plain, Ground.Stock) : null;

    /// <summary>The figures, in the order of <see cref="Percents"/>; empty where nothing was drawn.</summary>
    public ImmutableArray<ForecastFigure> Figures { get; init; } = [];

    /// <summary>The part of all cases in which the stock lasts for every shot left; null where nothing was drawn.</summary>
    public Ratio? Lasts { get; init; }

    /// <summary>The shooting days to come, as far as shots are left for them; empty where nothing was drawn.</summary>
    public ImmutableArray<ForecastDay> Days { get; init; } = [];

    /// <summary>The first day by whose evening the stock has run out in at least half of all cases; null where it lasts.</summary>
    public ForecastDay? RunsOut => FirstBelow(new Ratio(1, 2));

    /// <summary>The first day by whose evening the stock has run out in at least one of five cases; null where it lasts.</summary>
    public ForecastDay? MayRunOut => FirstBelow(new Ratio(4, 5));

    /// <summary>The forecast of a shoot.</summary>
    public static FilmForecast Of(ShootBook book, StockBook stock) => Of(ForecastGround.Of(book, stock));

    /// <summary>The forecast on some ground.</summary>
    /// <param name="draws">Shoots to draw; from 100.</param>
    public static FilmForecast Of(ForecastGround ground, int draws = Draws)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(draws, 100);
        var basis = BasisOf(ground);
        var forecast = new FilmForecast { Ground = ground, Basis = basis, Plain = PlainOf(ground) };
        if (basis != ForecastBasis.Drawn)
        {
            return forecast;
        }

        var days = Spread(ground);
        var drawn = new ForecastDraws(ground, [.. days.Select(d => d.Shots)], Seed, draws);
        var last = days.Count - 1;
        return forecast with
        {
            Figures = [.. Percents.Select(p => Figure(p, drawn.Enough(last, p), ground))],
            Lasts = new Ratio(drawn.Lasting(last, ground.Stock), drawn.Count),
            Days =
            [
                .. days.Select((d, i) => new ForecastDay(
                    d.Ahead,
                    d.On,
                    d.Shots,
                    [.. Percents.Select(p => drawn.Enough(i, p))],
                    new Ratio(drawn.Lasting(i, ground.Stock), drawn.Count))),
            ],
        };
    }

    static ForecastBasis BasisOf(ForecastGround ground) => ground switch
    {
        { ShotsLeft: null } => ForecastBasis.NoList,
        { ShotsLeft: 0 } => ForecastBasis.NothingLeft,
        { Finished.Length: 0 } => ForecastBasis.NothingFinished,
        { Finished.Length: < Fewest } => ForecastBasis.TooFew,
        _ => ForecastBasis.Drawn,
    };

    static Footage? PlainOf(ForecastGround ground)
    {
        if (ground is not { ShotsLeft: { } left, Finished.Length: > 0 })
        {
            return null;
        }

        var average = new Ratio(ground.Finished.Sum(s => s.Film.Frames), ground.Finished.Length);
        return new Footage((long)(average * left * (Ratio.One + ground.LossRate)).Ceiling());
    }

    static ForecastFigure Figure(int percent, Footage needed, ForecastGround ground)
    {
        var lacking = Beyond(needed, ground.Stock);
        return new ForecastFigure(percent, needed, lacking, Units(needed, ground.Unit), Units(lacking, ground.Unit));
    }

    static Footage Beyond(Footage needed, Footage stock) => Footage.Max(Footage.Zero, needed - stock);

    static long? Units(Footage film, Footage? unit) => unit is { } length ? (long)new Ratio(film.Frames, length.Frames).Ceiling() : null;

    // Evenly over the days that are listed; where none is left on the list, at the pace so far.
    static List<(int Ahead, DateOnly? On, int Shots)> Spread(ForecastGround ground)
    {
        var left = ground.ShotsLeft ?? 0;
        var listed = ground.DaysToCome;
        var pace = Math.Max(1, (int)new Ratio(ground.Finished.Length, Math.Max(1, ground.DaysShot)).Round());
        var count = Math.Min(listed.IsEmpty ? ((left - 1) / pace) + 1 : listed.Length, MostDays);
        return
        [
            .. Enumerable.Range(1, count).Select(day => (
                day,
                listed.IsEmpty ? (DateOnly?)null : listed[day - 1],
                day == count ? left : listed.IsEmpty ? day * pace : (int)new Ratio((long)left * day, count).Round())),
        ];
    }

    ForecastDay? FirstBelow(Ratio part) => Days.FirstOrDefault(d => d.Lasts <= part);
}
