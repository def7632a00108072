using System.Collections.Immutable;

namespace Spoolbook.Reading.Editing;

/// <summary>A key and what to write after it: one value, a list, or nothing, which takes the key out.</summary>
public sealed record KeyValue(string Key, ImmutableArray<string> Values)
{
    public KeyValue(string key, string value)
        : this(key, [value]) { }

    public static KeyValue Without(string key) => new(key, ImmutableArray<string>.Empty);
}
