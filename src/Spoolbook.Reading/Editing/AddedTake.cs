using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Editing;

/// <summary>A take that is not in the log yet. Several after the same entry come in the order in which they are given.</summary>
/// <param name="After">The entry that it follows, as its record tells; null at the beginning of the log.</param>
public sealed record AddedTake(Place? After, ImmutableArray<KeyValue> Keys) : LogChange;
