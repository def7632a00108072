using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Editing;

/// <summary>Keys of a take that is in the log.</summary>
/// <param name="Take">Where it stands, as its record tells.</param>
public sealed record ChangedTake(Place Take, ImmutableArray<KeyValue> Keys) : LogChange;
