namespace Spoolbook.Entry.Takes;

/// <summary>A row and the take that it is about.</summary>
/// <param name="Entry">The take's place in the log; null where it is not in it.</param>
/// <param name="Occurrence">Which of the takes of that slate it is, if there are several; from 0.</param>
sealed record MatchedRow(TakeRow Row, int? Entry, int Occurrence);
