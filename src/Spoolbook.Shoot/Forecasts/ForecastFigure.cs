using System.Collections.Immutable;
using Spoolbook.Film;

namespace Spoolbook.Shoot.Forecasts;

/// <summary>Film that is enough in a percentage of draws.</summary>
/// <param name="Percent">50, 80 or 95.</param>
/// <param name="Needed">Film of stock for the shots left, including losses outside takes.</param>
/// <param name="Lacking">What the stock lacks of it, counting only stock that suits the shots' light; no film where it lasts.</param>
/// <param name="Units">Whole units that hold <paramref name="Needed"/>; null where no unit's length is known.</param>
/// <param name="Orders">What to order, stock by stock; empty where the stock lasts.</param>
public sealed record ForecastFigure(int Percent, Footage Needed, Footage Lacking, long? Units, ImmutableArray<StockLacking> Orders)
{
    /// <summary>Whole units to order, of all stocks; null where no unit's length is known.</summary>
    public long? UnitsToOrder => Units is null ? null : Orders.Sum(o => o.Units);
}
