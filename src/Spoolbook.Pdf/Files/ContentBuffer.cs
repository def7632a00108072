using System.Globalization;

namespace Spoolbook.Pdf.Files;

/// <summary>The bytes of a page's content stream, written operator by operator.</summary>
sealed class ContentBuffer
{
    byte[] _bytes = new byte[4096];
    int _length;

    public byte[] ToArray() => _bytes[.._length];

    public ContentBuffer Number(double value)
    {
        Room(32);
        var rounded = Math.Round(value, 3, MidpointRounding.AwayFromZero) + 0.0;
        if (!rounded.TryFormat(_bytes.AsSpan(_length), out var written, "0.###", CultureInfo.InvariantCulture))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "A coordinate must be a page's coordinate.");
        }
        _length += written;
        return Byte((byte)' ');
    }

    /// <summary>An operator or other ASCII text, and a line end.</summary>
    public ContentBuffer Line(string text) => Text(text).Byte((byte)'\n');

    public ContentBuffer Text(string text)
    {
        Room(text.Length);
        foreach (var c in text)
        {
            _bytes[_length++] = (byte)c;
        }

        return this;
    }

    /// <summary>A glyph number as four hexadecimal digits.</summary>
    public ContentBuffer Glyph(int number)
    {
        Room(4);
        for (var shift = 12; shift >= 0; shift -= 4)
        {
            _bytes[_length++] = (byte)"0123456789ABCDEF"[number >> shift & 15];
        }

        return this;
    }

    ContentBuffer Byte(byte value)
    {
        Room(1);
        _bytes[_length++] = value;
        return this;
    }

    void Room(int more)
    {
        if (_length + more > _bytes.Length)
        {
            Array.Resize(ref _bytes, Math.Max(2 * _bytes.Length, _length + more));
        }
    }
}
