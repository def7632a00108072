namespace Spoolbook.Reading.Keys;

/// <param name="Short">What can replace the map: words, or nothing but the kind's word.</param>
sealed record EntryKind(string Word, KeyTable Table, EntryShort Short, string Description);
