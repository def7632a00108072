using Spoolbook.Entry.Takes;
using Spoolbook.Film;

namespace Spoolbook.Entry;

/// <summary>A row and what it comes to.</summary>
/// <param name="Occurrence">Which of the roll's takes of that slate it is, if a careless log has several; from 0.</param>
/// <param name="From">Where the take is to start, by the strip's positions.</param>
/// <param name="To">Where it is to end.</param>
sealed record RowOutcome(TakeRow Row, int Occurrence, Footage From, Footage To);
