using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Forecasts;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot;

/// <summary>
/// All the books of a production. Each is kept once, when it is first read, for every check and every paper. Safe for
/// any number of threads.
/// </summary>
public sealed class Books
{
    readonly Lazy<StockBook> _stock;
    readonly Lazy<SpoolBook> _spools;
    readonly Lazy<KitBook> _kit;
    readonly Lazy<CameraBook> _cameras;
    readonly Lazy<CostBook> _cost;
    readonly Lazy<CoverageBook> _coverage;
    readonly Lazy<DeliveryBook> _delivery;
    readonly Lazy<FilmForecast> _forecast;
    readonly Lazy<CostToEnd> _toEnd;
    readonly Lazy<MetricBook> _metric;
    readonly Lazy<FilmBridge> _bridge;

    readonly long _shotsToGoOn;
    readonly double _balanceMireds;

    Books(ShootBook shoot, long shotsToGoOn, double balanceMireds, CostBook? cost = null)
    {
        (_shotsToGoOn, _balanceMireds) = (shotsToGoOn, balanceMireds);
        Shoot = shoot;
        _stock = new(() => StockBook.Keep(shoot));
        _spools = new(() => SpoolBook.Keep(shoot));
        _kit = new(() => KitBook.Keep(shoot));
        _cameras = new(() => CameraBook.Keep(shoot, Kit));
        _cost = new(() => cost ?? CostBook.Keep(shoot, Stock));
        _coverage = new(() => CoverageBook.Keep(shoot));
        _delivery = new(() => DeliveryBook.Keep(shoot));
        _forecast = new(() =>
            FilmForecast.Compute(ForecastInput.Gather(shoot, Stock, Coverage, balanceMireds) with { ShotsToGoOn = shotsToGoOn })
        );
        _metric = new(() => MetricBook.Keep(shoot, Stock));
        _bridge = new(() => FilmBridge.Keep(shoot, Stock, Metric));
        _toEnd = new(() => CostToEnd.Compute(Stock, Cost, Forecast));
    }

    /// <summary>The books of a production.</summary>
    /// <param name="shotsToGoOn">Finished shots that make an average useful: the production's tolerance <c>shots-to-go-on</c>.</param>
    /// <param name="balanceMireds">Mireds that film, filter and light may be apart: the tolerance <c>balance-mireds</c>.</param>
    /// <param name="slack">Lengths too small to keep books on; the house's unless given.</param>
    public static Books Of(
        Production production,
        long shotsToGoOn = FilmForecast.UsualShotsToGoOn,
        double balanceMireds = LightMatch.UsualMireds,
        BookSlack? slack = null
    ) => new(BookKeeper.Keep(production, slack), shotsToGoOn, balanceMireds);

    /// <summary>The same books with another account of the cost.</summary>
    internal Books With(CostBook cost) => new(Shoot, _shotsToGoOn, _balanceMireds, cost);

    /// <summary>The rolls: the strip of each, its tally, its effects and its lab work.</summary>
    public ShootBook Shoot { get; }

    /// <summary>What was written down.</summary>
    public Production Production => Shoot.Production;

    /// <summary>How much film came, and where it is.</summary>
    public StockBook Stock => _stock.Value;

    /// <summary>The empty take-up spools.</summary>
    public SpoolBook Spools => _spools.Value;

    /// <summary>The kit as it went out and came back.</summary>
    public KitBook Kit => _kit.Value;

    /// <summary>What is in which camera.</summary>
    public CameraBook Cameras => _cameras.Value;

    /// <summary>What the shoot costs.</summary>
    public CostBook Cost => _cost.Value;

    /// <summary>The accounts in centimetres, rounded so that they add up as printed.</summary>
    public MetricBook Metric => _metric.Value;

    /// <summary>How the film came, and where all of it is.</summary>
    public FilmBridge Bridge => _bridge.Value;

    /// <summary>Which shots are got, and with which takes.</summary>
    public CoverageBook Coverage => _coverage.Value;

    /// <summary>What the lab is to deliver.</summary>
    public DeliveryBook Delivery => _delivery.Value;

    /// <summary>The film still needed.</summary>
    public FilmForecast Forecast => _forecast.Value;

    /// <summary>The cost to the end, at the rate so far.</summary>
    public CostToEnd ToEnd => _toEnd.Value;
}
