namespace Spoolbook.Reading.Keys;

/// <summary>
/// A key that a map can have. The reader, the message about a misspelt key, the JSON Schema and the tables of the file format
/// all read the same key, so they cannot disagree.
/// </summary>
/// <param name="Description">What it says, in one line.</param>
abstract record Key(string Name, string Description)
{
    /// <summary>Whether the map is useless without it.</summary>
    public bool Required { get; init; }

    /// <summary>An example value, as YAML.</summary>
    public string Example { get; init; } = "";
}
