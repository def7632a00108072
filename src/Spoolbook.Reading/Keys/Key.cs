namespace Spoolbook.Reading.Keys;

/// <summary>
/// A key that a map can have. The reader, the message about a misspelt key, the JSON Schema and the tables of the
/// file format all look at the same key, so none can say something else.
/// </summary>
/// <param name="Description">What it tells, in a line.</param>
abstract record Key(string Name, string Description)
{
    /// <summary>Whether the map is of no use without it.</summary>
    public bool Required { get; init; }

    /// <summary>How it may look, as YAML.</summary>
    public string Example { get; init; } = "";
}
