namespace Spoolbook.Reading.Keys;

/// <summary>One kind of entry.</summary>
/// <param name="Short">What may stand instead of the map: words, or nothing but a word of its own.</param>
sealed record EntryKind(string Word, KeyTable Table, EntryShort Short, string Description);
