using System.Collections.Immutable;

namespace Spoolbook.Reading.Keys;

/// <summary>A key with a list of entries, each under the word of its kind.</summary>
sealed record EntriesKey(string Name, ImmutableArray<EntryKind> Kinds, string Description) : Key(Name, Description);
