namespace Spoolbook.Reading.Trees;

/// <summary>A key and what is written after it.</summary>
/// <param name="Key">The key as meant.</param>
/// <param name="Value">The value as meant: an alias is what it repeats.</param>
sealed record MapEntry(ScalarNode Key, Node Value)
{
    /// <summary>The key as written, perhaps an alias.</summary>
    public Node WrittenKey { get; init; } = Key;

    /// <summary>The value as written, perhaps an alias.</summary>
    public Node WrittenValue { get; init; } = Value;

    /// <summary>The key's name; null where the key is an alias.</summary>
    public string? WrittenName => (WrittenKey as ScalarNode)?.Text;

    public int Start => WrittenKey.Start;

    public int End => Math.Max(WrittenKey.End, WrittenValue.End);
}
