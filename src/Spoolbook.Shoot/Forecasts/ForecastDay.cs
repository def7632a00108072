using System.Collections.Immutable;
using Spoolbook.Film;

namespace Spoolbook.Shoot.Forecasts;

/// <summary>What is likely by the evening of a shooting day to come.</summary>
/// <param name="Ahead">Which shooting day from now; from 1.</param>
/// <param name="On">Its date; null beyond the days that are listed.</param>
/// <param name="Shots">Shots of those left that should be got by then.</param>
/// <param name="Needed">Film of stock used by then: in 50, 80 and 95 of a hundred cases it is enough.</param>
/// <param name="Lasts">The part of all cases in which the stock has lasted until then.</param>
public sealed record ForecastDay(int Ahead, DateOnly? On, int Shots, ImmutableArray<Footage> Needed, Ratio Lasts);
