using System.Collections.Immutable;
using Spoolbook.Film;

namespace Spoolbook.Shoot.Forecasts;

/// <summary>The forecast for the evening of a shooting day to come.</summary>
/// <param name="Ahead">Which shooting day from now; from 1.</param>
/// <param name="On">Its date; null beyond the listed days.</param>
/// <param name="Shots">Shots of those left that should be got by then.</param>
/// <param name="Needed">Film of stock used by then; enough in 50, 80 and 95 % of draws.</param>
/// <param name="Lasts">The part of all draws in which the stock lasts until then.</param>
public sealed record ForecastDay(int Ahead, DateOnly? On, int Shots, ImmutableArray<Footage> Needed, Ratio Lasts);
