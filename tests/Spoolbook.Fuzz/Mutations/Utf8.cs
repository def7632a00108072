using System.Text;

namespace Spoolbook.Fuzz.Mutations;

/// <summary>Text and bytes, lone surrogates and all: those are written as three bytes each, which no sound file holds.</summary>
internal static class Utf8
{
    public static string Text(byte[] bytes) => Encoding.UTF8.GetString(bytes);

    public static byte[] Bytes(string text)
    {
        if (!text.Any(char.IsSurrogate))
        {
            return Encoding.UTF8.GetBytes(text);
        }

        var bytes = new List<byte>(text.Length * 2);
        var buffer = new byte[4];
        for (var i = 0; i < text.Length; i++)
        {
            if (Rune.TryGetRuneAt(text, i, out var rune))
            {
                bytes.AddRange(buffer[..rune.EncodeToUtf8(buffer)]);
                i += rune.Utf16SequenceLength - 1;
            }
            else
            {
                var c = text[i];
                bytes.AddRange([(byte)(0xE0 | (c >> 12)), (byte)(0x80 | ((c >> 6) & 0x3F)), (byte)(0x80 | (c & 0x3F))]);
            }
        }

        return [.. bytes];
    }
}
