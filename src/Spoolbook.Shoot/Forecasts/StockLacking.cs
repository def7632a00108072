using Spoolbook.Film;

namespace Spoolbook.Shoot.Forecasts;

/// <summary>A stock that runs short.</summary>
/// <param name="Order">What to order.</param>
/// <param name="Film">What is lacking; above zero.</param>
/// <param name="Units">Whole units that hold it; null where no unit's length is known.</param>
public sealed record StockLacking(StockToOrder Order, Footage Film, long? Units)
{
    internal static StockLacking Of(StockToOrder order, Footage film) =>
        new(order, film, order.Unit is { } unit ? (long)new Ratio(film.Frames, unit.Frames).Ceiling() : null);
}
