using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Editing;

/// <summary>An entry that is taken out of the log. A comment beside it stays, on a line of its own.</summary>
/// <param name="Entry">Where it is, as its record has it.</param>
public sealed record RemovedEntry(Place Entry) : RollChange;
