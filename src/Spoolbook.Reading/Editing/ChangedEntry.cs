using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Editing;

/// <summary>Keys of an entry that is in the log: changed, added or taken out.</summary>
/// <param name="Entry">Where it is, as its record has it.</param>
public sealed record ChangedEntry(Place Entry, ImmutableArray<KeyValue> Keys) : RollChange;
