using Spoolbook.Film;

namespace Spoolbook.Shoot.Forecasts;

/// <summary>A shot that was got, and the film that all its takes spent.</summary>
/// <param name="Name">Scene and letter.</param>
/// <param name="Film">Film of its takes, good and bad, every frame counted once; none where another shot's take owns the same
/// frames.</param>
public sealed record FinishedShot(string Name, Footage Film);
