using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Shoot.Forecasts;

/// <summary>
/// The cost of the shoot at the end, if film use and prices go on as so far: each foot still needed at the lab's price
/// for a foot so far (including minimums, shipping and tax), and each foot that the stock lacks at the stock's price
/// for a foot. Amounts are in cents, half a cent away from zero.
/// </summary>
/// <param name="Film">Film of stock still needed, at the plain average of the forecast; null without anything to go by.</param>
/// <param name="Lacking">What the stock lacks of it; null where <paramref name="Film"/> is.</param>
/// <param name="Lab">The lab's work on that film; null where it is unknown, never zero because a rate is missing.</param>
/// <param name="Stock">Stock to buy for it; null where it is unknown.</param>
/// <param name="Total">The whole cost with these two; null where one of them is null.</param>
public sealed record CostToEnd(Footage? Film, Footage? Lacking, decimal? Lab, decimal? Stock, decimal? Total)
{
    /// <summary>What the lab's work cost so far that the lab still to come follows from; zero where nothing is billed by length.</summary>
    public decimal LabSoFar { get; internal init; }

    /// <summary>The film of that work.</summary>
    public Footage FilmSoFar { get; internal init; }

    /// <summary>What is still to come: the lab's work and the stock; null where one of them is.</summary>
    public decimal? ToCome => Lab + Stock;

    /// <summary>The cost to the end.</summary>
    internal static CostToEnd Compute(StockBook stock, CostBook cost, FilmForecast forecast)
    {
        var work = cost.Lines.Where(l => l.Stage != CostStage.Bought).ToList();
        var billed = StockBook.Sum(work.Where(l => l is { Kind: CostKind.Process, Film: not null }), l => l.Film!.Value);
        var lab = forecast.Plain is { } film ? LabOf(film, work, billed) : null;
        var more = forecast.PlainOrders is { } orders ? Bought(orders, stock) : null;
        return new CostToEnd(forecast.Plain, forecast.PlainLacking, lab, more, lab is { } l && more is { } m ? cost.Total + l + m : null)
        {
            LabSoFar = CostBook.SumOf(work),
            FilmSoFar = billed,
        };
    }

    static decimal? LabOf(Footage film, List<CostLine> work, Footage billed) =>
        film == Footage.Zero ? 0.00m
        : billed == Footage.Zero || work.Exists(l => l.Amount is null) ? null
        : CostBook.ToCents(Ratio.FromDecimal(CostBook.SumOf(work)) * film.Frames / billed.Frames);

    // Stock of which no lot came costs what a foot of any did.
    static decimal? Bought(IEnumerable<StockLacking> orders, StockBook stock)
    {
        var cents = 0m;
        foreach (var order in orders)
        {
            List<StockLotBook> lots = [.. order.Order.Lots.IsEmpty ? stock.Counted : order.Order.Lots];
            var received = lots.Sum(l => l.Received.Frames);
            if (
                received == 0
                || lots.Exists(l => l.Lot.UnitPrice is null)
                || CostBook.ToCents(Ratio.FromDecimal(Paid(lots)) * order.Film.Frames / received) is not { } price
            )
            {
                return null;
            }

            cents += price;
        }

        return decimal.Add(cents, 0.00m);
    }

    static decimal Paid(List<StockLotBook> lots) => lots.Sum(l => l.Lot.UnitPrice!.Value * l.Lot.Units.Value);
}
