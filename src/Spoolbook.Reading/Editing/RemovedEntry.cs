using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Editing;

/// <summary>An entry to take out of the log. A comment beside it stays, on a line of its own.</summary>
/// <param name="Entry">Where the entry is, by its record's place.</param>
public sealed record RemovedEntry(Place Entry) : RollChange;
