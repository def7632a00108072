using Spoolbook.Film;

namespace Spoolbook.Shoot.Accounts;

/// <summary>What one of several units did with its film in a day.</summary>
/// <param name="Body">The unit's camera; null where no body is written.</param>
/// <param name="Loaded">Film loaded in it.</param>
/// <param name="ShortEndsMade">Short ends canned from it.</param>
/// <param name="Use">The use of the film.</param>
public sealed record StockUnit(string? Body, Footage Loaded, Footage ShortEndsMade, UseOfFilm Use);
