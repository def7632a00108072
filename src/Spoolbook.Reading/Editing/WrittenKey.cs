namespace Spoolbook.Reading.Editing;

/// <summary>A key with the text that is written after it.</summary>
public sealed record WrittenKey(string Key, string Text);
