using System.Collections.Immutable;

namespace Spoolbook.Reading.Editing;

/// <summary>A key with what is to stand after it: one value, a list, or nothing at all, which takes the key out.</summary>
public sealed record KeyValue(string Key, ImmutableArray<string> Values)
{
    public KeyValue(string key, string value)
        : this(key, [value]) { }

    /// <summary>Takes a key out.</summary>
    public static KeyValue Without(string key) => new(key, ImmutableArray<string>.Empty);
}
