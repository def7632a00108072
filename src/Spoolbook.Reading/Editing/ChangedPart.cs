using System.Collections.Immutable;

namespace Spoolbook.Reading.Editing;

/// <summary>Keys of a roll outside its log. An <c>unload</c> that is not there yet is written.</summary>
public sealed record ChangedPart(RollPart Part, ImmutableArray<KeyValue> Keys) : RollChange;
