using Spoolbook.Entry.Takes;
using Spoolbook.Film;

namespace Spoolbook.Entry;

/// <summary>A row and what becomes of its take.</summary>
/// <param name="Occurrence">Which of the roll's takes with that slate, from 0: a careless log has several.</param>
/// <param name="From">Where the take should start, in the strip's positions.</param>
/// <param name="To">Where it should end, in the strip's positions.</param>
sealed record RowOutcome(TakeRow Row, int Occurrence, Footage From, Footage To);
