using System.Collections.Immutable;
using Spoolbook.Film;

namespace Spoolbook.Papers.Workbook;

/// <summary>The film left in an evening.</summary>
/// <param name="Label">What an axis calls the evening.</param>
/// <param name="On">The date; null where none is on the schedule, and for the film received.</param>
/// <param name="Ahead">Shooting days from now; null for an evening before.</param>
/// <param name="Left">Film left; null in an evening to come.</param>
/// <param name="Likely">What is left at least, for each of the forecast's percentages; empty in an evening before.</param>
sealed record StockPoint(string Label, DateOnly? On, int? Ahead, Footage? Left, ImmutableArray<Footage> Likely);
