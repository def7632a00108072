using System.Collections.Immutable;

namespace Spoolbook.Reading.Editing;

/// <summary>A roll that is not in the production yet: just loaded, with nothing in its log.</summary>
/// <param name="Keys">The roll's own keys, its name among them.</param>
/// <param name="Load">The keys of its loading.</param>
public sealed record NewRoll(ImmutableArray<KeyValue> Keys, ImmutableArray<KeyValue> Load);
