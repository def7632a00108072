using Spoolbook.Film;

namespace Spoolbook.Papers.Workbook;

/// <summary>An account of the film.</summary>
/// <param name="Called">Its name on the papers.</param>
/// <param name="Formula">The formula of its frames.</param>
/// <param name="Centimetres">The film in metres, as its account prints it.</param>
sealed record FilmAccount(string Called, string Formula, Footage Film, long Centimetres);
