using System.Text;
using System.Text.Unicode;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Files;

/// <summary>Bytes to text: UTF-8, with or without a byte order mark, and a fault for anything else.</summary>
public static class TextDecoder
{
    static readonly Sentence SaveAsUtf8 = Sentence.Of("sheet/unreadable-file.help.encoding");

    public static FileText Decode(ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length > FileText.MostBytes)
        {
            return FileText.TooLarge(bytes.Length);
        }

        if (LooksLikeUtf16(bytes))
        {
            return FileText.Unreadable(Sentence.Of("sheet/unreadable-file.message.utf-16"), SaveAsUtf8);
        }

        if (bytes.Contains((byte)0))
        {
            return FileText.Unreadable(Sentence.Of("sheet/unreadable-file.message.not-text"), SaveAsUtf8);
        }

        if (bytes.StartsWith("\uFEFF"u8))
        {
            bytes = bytes[3..];
        }

        var text = new char[bytes.Length];
        Utf8.ToUtf16(bytes, text, out var read, out var written, replaceInvalidSequences: false);
        return read == bytes.Length ? FileText.Of(new string(text, 0, written)) : NotUtf8(bytes, text.AsSpan(0, written));
    }

    static bool LooksLikeUtf16(ReadOnlySpan<byte> bytes) =>
        bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE])
        || bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF])
        || (bytes.Length >= 4 && bytes[0] is 0 != bytes[1] is 0 && bytes[2] is 0 != bytes[3] is 0 && bytes[0] is 0 == bytes[2] is 0);

    static FileText NotUtf8(ReadOnlySpan<byte> bytes, ReadOnlySpan<char> before)
    {
        var line = 1 + before.Count('\n');
        var column = before.Length - before.LastIndexOf('\n');
        var fault = new FileFault(
            SheetChecks.UnreadableFile,
            Sentence.Of("sheet/unreadable-file.message.letter"),
            SaveAsUtf8,
            line,
            column
        );
        return new FileText(Encoding.UTF8.GetString(bytes), fault);
    }
}
