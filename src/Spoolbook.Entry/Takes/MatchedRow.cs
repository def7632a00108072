namespace Spoolbook.Entry.Takes;

/// <summary>A row and its take.</summary>
/// <param name="Entry">The take's place in the log; null for a take that is not in it.</param>
/// <param name="Occurrence">Which of the takes with that slate, where there are several; from 0.</param>
sealed record MatchedRow(TakeRow Row, int? Entry, int Occurrence);
