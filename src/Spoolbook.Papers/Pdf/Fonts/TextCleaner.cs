using System.Globalization;
using System.Text;

namespace Spoolbook.Papers.Pdf.Fonts;

/// <summary>Makes a text fit to draw, and tells of what will not look as it was written.</summary>
static class TextCleaner
{
    /// <summary>Composed characters, nothing invisible; reports missing characters and text from right to left.</summary>
    public static string Clean(string text, Action<string> missing, Action rightToLeft)
    {
        if (IsPlain(text)) return text;
        var clean = new StringBuilder(text.Length);
        bool told = false;
        foreach (var character in Composer.Compose(text))
        {
            if (!told && IsRightToLeft(character.Value))
            {
                told = true;
                rightToLeft();
            }
            if (IsInvisible(character)) continue;
            if (!FontShelf.Get(Face.Regular).Has(character) && !IsLayout(character.Value)) missing(character.ToString());
            clean.Append(character.ToString());
        }
        return clean.ToString();
    }

    static bool IsPlain(string text)
    {
        foreach (char c in text)
        {
            if (c is < ' ' or > '~' && c is not '\n') return false;
        }
        return true;
    }

    /// <summary>Blanks, line ends and U+2028 shape the lines and need no glyph.</summary>
    static bool IsLayout(int character) => character is ' ' or '\n' or '\r' or '\t' or 0x2028;

    /// <summary>Marks of joining, direction and variation: they have no shape of their own.</summary>
    static bool IsInvisible(Rune character) =>
        Rune.GetUnicodeCategory(character) == UnicodeCategory.Format || character.Value is >= 0xFE00 and <= 0xFE0F or >= 0xE0100 and <= 0xE01EF;

    /// <summary>Hebrew, Arabic and their neighbours, and the marks that turn a text round.</summary>
    static bool IsRightToLeft(int c) =>
        c is >= 0x0590 and <= 0x08FF or >= 0xFB1D and <= 0xFDFF or >= 0xFE70 and <= 0xFEFC
            or >= 0x10800 and <= 0x10FFF or >= 0x1E800 and <= 0x1EFFF or 0x200F or 0x202B or 0x202E or 0x2067;
}
