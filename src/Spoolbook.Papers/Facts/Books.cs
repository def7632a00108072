using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Forecasts;

namespace Spoolbook.Papers.Facts;

/// <summary>The books that papers are printed from, and the forecast that follows from them: each kept once, and read by every paper.</summary>
public sealed record Books(ShootBook Shoot, StockBook Stock, CostBook Cost, KitBook Kit, FilmForecast Forecast)
{
    /// <summary>What it will cost to the end, at the rate so far.</summary>
    public CostToEnd ToEnd { get; } = CostToEnd.Of(Stock, Cost, Forecast);

    /// <summary>The stock, the cost, the kit and the forecast that follow from a shoot.</summary>
    public static Books Of(ShootBook shoot)
    {
        var stock = StockBook.Keep(shoot);
        return new(shoot, stock, CostBook.Keep(shoot), KitBook.Keep(shoot), FilmForecast.Of(shoot, stock));
    }
}
