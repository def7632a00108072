using System.Collections.Immutable;

namespace Spoolbook.Reading.Editing;

/// <summary>Keys of a roll outside its log. A missing <c>unload</c> is added.</summary>
public sealed record ChangedPart(RollPart Part, ImmutableArray<KeyValue> Keys) : RollChange;
