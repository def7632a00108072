using System.Collections.Immutable;

namespace Spoolbook.Reading.Editing;

/// <summary>A roll that is new to the production: just loaded, its log empty.</summary>
/// <param name="Keys">The roll's own keys, its name among them.</param>
public sealed record NewRoll(ImmutableArray<KeyValue> Keys, ImmutableArray<KeyValue> Load);
