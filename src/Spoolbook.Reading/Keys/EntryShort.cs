namespace Spoolbook.Reading.Keys;

/// <summary>What can replace the map of an entry.</summary>
enum EntryShort
{
    /// <summary>Nothing can: the entry needs its map.</summary>
    None,

    /// <summary>Free words.</summary>
    Words,

    /// <summary>Nothing, or <c>full</c>.</summary>
    Full,
}
