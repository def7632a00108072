using Spoolbook.Shoot.Forecasts;

namespace Spoolbook.Papers.Wording;

/// <summary>Stock to order, in words.</summary>
static class OrderWords
{
    /// <summary>
    /// The units of each stock: <c>3 units of 500 T and 1 unit of 250 D</c>; empty where nothing is lacking, or a stock has no name.
    /// </summary>
    public static string Units(IReadOnlyCollection<StockLacking> orders, PaperFormat format)
    {
        var units = orders.Select(o => Units(o, format)).ToList();
        return units.Count == 0 || units.Exists(u => u.Length == 0)
            ? ""
            : units.Aggregate((these, more) => format.Words.Fill("forecast-order-and", ("these", these), ("more", more)));
    }

    static string Units(StockLacking lacking, PaperFormat format)
    {
        var stock = lacking.Order.Stock
            ?? (
                lacking.Order.Balance is { } balance ? format.Words.Fill("forecast-order-stock", ("balance", format.Balance(balance))) : ""
            );
        return stock.Length == 0 || lacking.Units is not { } units
            ? ""
            : format.Words.Fill(
                units == 1 ? "forecast-order-one" : "forecast-order-many",
                ("n", PaperFormat.Number(units)),
                ("stock", stock)
            );
    }
}
