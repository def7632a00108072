namespace Spoolbook.Reading.Forms;

/// <summary>Text to a value; false where the text is no such value. Never throws, whatever the text.</summary>
delegate bool Parser<T>(string text, ReadingContext context, out T value);
