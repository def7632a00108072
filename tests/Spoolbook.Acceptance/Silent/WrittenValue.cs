namespace Spoolbook.Acceptance.Silent;

/// <summary>A value of a record, or a whole entry of a log, with the characters that it is written with.</summary>
/// <param name="Key">The key with what it belongs to: <c>take.focus</c>.</param>
/// <param name="Text">The value as read.</param>
/// <param name="From">The first character of the value.</param>
/// <param name="To">The first character after it.</param>
/// <param name="EntryFrom">The first character of what goes when it is deleted: the key, or the item.</param>
/// <param name="IsEntry">Whether it is an entry of a log and not a value.</param>
sealed record WrittenValue(string File, string Key, string Text, int From, int To, int EntryFrom, bool IsEntry);
