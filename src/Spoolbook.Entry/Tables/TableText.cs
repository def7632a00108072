using System.Globalization;
using System.Text;
using Spoolbook.Reading.Files;

namespace Spoolbook.Entry.Tables;

/// <summary>
/// The text of a table in a text file. Spreadsheet programs save it in their machine's encoding or in UTF-16 without asking:
/// both are read where the text is not UTF-8.
/// </summary>
static class TableText
{
    /// <summary>The text, with notes on how it was read.</summary>
    /// <exception cref="TableFault">The file is not text.</exception>
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

        // The fault brings its text along only where the file is text and just its letters are not UTF-8.
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
