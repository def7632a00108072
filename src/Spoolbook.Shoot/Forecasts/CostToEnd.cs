using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Shoot.Forecasts;

/// <summary>
/// What the shoot will have cost if the shots left take film, and film costs money, at the rate so far: for each
/// foot still needed what the lab took for a foot so far (minimums, shipping and tax among it), and for each foot
/// that the stock lacks what a foot of the stock did cost. Amounts are in cents, a half away from zero.
/// </summary>
/// <param name="Film">Film of stock still needed, at the plain average of the forecast; null where there is nothing to go by.</param>
/// <param name="Lacking">What the stock lacks of it; null where <paramref name="Film"/> is.</param>
/// <param name="Lab">The lab's work on that film; null where it cannot be told, never nothing for want of a rate.</param>
/// <param name="Stock">Stock to buy for it; null where it cannot be told.</param>
/// <param name="Total">All of the cost with these two; null where one of them is.</param>
public sealed record CostToEnd(Footage? Film, Footage? Lacking, decimal? Lab, decimal? Stock, decimal? Total)
{
    /// <summary>The cost to the end.</summary>
    internal static CostToEnd Compute(StockBook stock, CostBook cost, FilmForecast forecast)
    {
        var lab = forecast.Plain is { } film ? LabOf(film, cost) : null;
        var more = forecast.PlainLacking is { } lacking ? Bought(lacking, stock) : null;
        return new CostToEnd(forecast.Plain, forecast.PlainLacking, lab, more, lab is { } l && more is { } m ? cost.Total + l + m : null);
    }

    static decimal? LabOf(Footage film, CostBook cost)
    {
        var work = cost.Lines.Where(l => l.Stage != CostStage.Bought).ToList();
        var billed = work.Where(l => l is { Kind: CostKind.Process, Film: not null }).Sum(l => l.Film!.Value.Frames);
        return film == Footage.Zero ? 0.00m
            : billed == 0 || work.Exists(l => l.Amount is null) ? null
            : CostBook.ToCents(Ratio.FromDecimal(CostBook.SumOf(work)) * film.Frames / billed);
    }

    static decimal? Bought(Footage lacking, StockBook stock)
    {
        var lots = stock.Counted.Select(l => l.Lot).ToList();
        var received = stock.Counted.Sum(l => l.Received.Frames);
        return lacking == Footage.Zero ? 0.00m
            : received == 0 || lots.Exists(l => l.UnitPrice is null) ? null
            : CostBook.ToCents(Ratio.FromDecimal(lots.Sum(l => l.UnitPrice!.Value * l.Units.Value)) * lacking.Frames / received);
    }
}
