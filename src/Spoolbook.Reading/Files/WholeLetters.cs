namespace Spoolbook.Reading.Files;

/// <summary>Cuts a text between letters. A letter beyond U+FFFF takes two characters, and no encoder writes half of one.</summary>
public static class WholeLetters
{
    /// <summary>The place to cut at: the one asked for, or the one before where that is the middle of a letter.</summary>
    public static int At(string text, int index) =>
        index > 0 && index < text.Length && char.IsLowSurrogate(text[index]) && char.IsHighSurrogate(text[index - 1]) ? index - 1 : index;
}
