using Spoolbook.Entry.Takes;
using Spoolbook.Film;

namespace Spoolbook.Entry;

/// <summary>A row and what becomes of its take.</summary>
/// <param name="Occurrence">Which of the roll's takes with that slate, where a careless log has several; from 0.</param>
/// <param name="From">Where the take should start, by the strip's positions.</param>
/// <param name="To">Where it should end.</param>
sealed record RowOutcome(TakeRow Row, int Occurrence, Footage From, Footage To);
