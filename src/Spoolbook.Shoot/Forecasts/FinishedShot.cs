using Spoolbook.Film;

namespace Spoolbook.Shoot.Forecasts;

/// <summary>A shot that is got, and the film of all its takes.</summary>
/// <param name="Name">Scene and letter.</param>
/// <param name="Film">
/// Film of its takes, good and bad, every frame counted once; frames that another shot's take owns are not counted.
/// </param>
public sealed record FinishedShot(string Name, Footage Film);
