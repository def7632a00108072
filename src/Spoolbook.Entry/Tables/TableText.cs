using System.Globalization;
using System.Text;
using Spoolbook.Reading.Files;

namespace Spoolbook.Entry.Tables;

/// <summary>
/// The text of a table in a text file. Spreadsheets save one in the encoding of their machine or in UTF-16, and ask nobody: both are
/// read where the text is not UTF-8.
/// </summary>
static class TableText
{
    /// <summary>The text; what is worth knowing of how it was read is noted.</summary>
    /// <exception cref="TableFault">It is no text.</exception>
    public static string Decode(string name, byte[] bytes, Objections notes)
    {
        if (Utf16(bytes) is { } wide)
        {
            return wide;
        }

        var file = TextDecoder.Decode(bytes);
        if (file.Fault is not { } fault)
        {
            return file.Text!;
        }

        // A text comes along with the fault where it is a text, and only its letters are not UTF-8.
        if (file.Text is null)
        {
            throw new TableFault(
                string.Create(CultureInfo.InvariantCulture, $"{name}:{fault.Line}"),
                fault.Message.ToString(),
                fault.Help.ToString()
            );
        }

        notes.Add(
            string.Create(CultureInfo.InvariantCulture, $"{name}:{fault.Line}"),
            "The table is read as Windows-1252, since it is not UTF-8.",
            "Look at the accents; where they are wrong, save it as CSV UTF-8."
        );
        return CodePagesEncodingProvider.Instance.GetEncoding(1252)!.GetString(bytes);
    }

    static string? Utf16(byte[] bytes) =>
        bytes is [0xFF, 0xFE, ..] ? Encoding.Unicode.GetString(bytes.AsSpan(2))
        : bytes is [0xFE, 0xFF, ..] ? Encoding.BigEndianUnicode.GetString(bytes.AsSpan(2))
        : null;
}
