namespace Spoolbook.Reading.Trees;

/// <summary>A key and what is written after it.</summary>
/// <param name="Key">The key as it is meant.</param>
/// <param name="Value">The value as it is meant: what an alias repeats in its place.</param>
sealed record MapEntry(ScalarNode Key, Node Value)
{
    /// <summary>The key as it is written, where it may be an alias.</summary>
    public Node WrittenKey { get; init; } = Key;

    /// <summary>The value as it is written, where it may be an alias.</summary>
    public Node WrittenValue { get; init; } = Value;

    /// <summary>The key's name; null where an alias repeats it.</summary>
    public string? WrittenName => (WrittenKey as ScalarNode)?.Text;

    public int Start => WrittenKey.Start;

    public int End => Math.Max(WrittenKey.End, WrittenValue.End);
}
