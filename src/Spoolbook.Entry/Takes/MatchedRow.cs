namespace Spoolbook.Entry.Takes;

/// <summary>A row and its take.</summary>
/// <param name="Entry">The take's place in the log; null for a new take.</param>
/// <param name="Occurrence">Which of several takes with that slate, from 0.</param>
sealed record MatchedRow(TakeRow Row, int? Entry, int Occurrence);
