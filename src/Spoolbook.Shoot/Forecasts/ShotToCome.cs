using Spoolbook.Film;

namespace Spoolbook.Shoot.Forecasts;

/// <summary>A shot still to be got.</summary>
/// <param name="Name">Scene and letter.</param>
/// <param name="Kind">The place of its kind among <see cref="ForecastInput.Kinds"/>.</param>
/// <param name="Screen">Film of its planned screen time at the projection speed; null where none is planned.</param>
public sealed record ShotToCome(string Name, int Kind, Footage? Screen);
