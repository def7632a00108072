namespace Spoolbook.Reading.Keys;

/// <summary>What may stand in an entry instead of a map.</summary>
enum EntryShort
{
    /// <summary>Only a map.</summary>
    None,

    /// <summary>Free words.</summary>
    Words,

    /// <summary>Nothing, or <c>full</c>.</summary>
    Full,
}
