using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Forecasts;

/// <summary>Film of one colour balance that can still be shot.</summary>
public sealed record StockPool(ColourBalance Balance, Footage Film);
