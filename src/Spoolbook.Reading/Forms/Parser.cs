namespace Spoolbook.Reading.Forms;

/// <summary>Text to a value; false where the text does not write one. Never throws, whatever the text.</summary>
delegate bool Parser<T>(string text, ReadingContext context, out T value);
