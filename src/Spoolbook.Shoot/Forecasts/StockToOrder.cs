using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Forecasts;

/// <summary>A stock to order.</summary>
/// <param name="Stock">Its name as on the can; null where no lot of it came, or several would do.</param>
/// <param name="Balance">Its colour balance; null where any will do.</param>
/// <param name="Unit">The length of a unit; null where no stock came.</param>
/// <param name="Lots">The lots that give its price.</param>
public sealed record StockToOrder(string? Stock, ColourBalance? Balance, Footage? Unit, ImmutableArray<StockLotBook> Lots);
