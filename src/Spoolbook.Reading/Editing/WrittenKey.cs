namespace Spoolbook.Reading.Editing;

/// <summary>A key and the text after it.</summary>
public sealed record WrittenKey(string Key, string Text);
