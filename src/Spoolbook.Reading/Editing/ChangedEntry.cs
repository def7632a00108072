using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Editing;

/// <summary>Keys of an entry in the log: changed, added or taken out.</summary>
/// <param name="Entry">Where the entry is, by its record's place.</param>
public sealed record ChangedEntry(Place Entry, ImmutableArray<KeyValue> Keys) : RollChange;
