using System.Globalization;
using System.Text;

namespace Spoolbook.Papers.Typesetting.Fonts;

/// <summary>Makes a text fit to draw, and reports what will not look as written.</summary>
static class TextCleaner
{
    /// <summary>
    /// Composes characters and drops invisible ones. A letter that the fonts lack keeps its accents, so that it is one
    /// box.
    /// </summary>
    public static DrawableText Clean(string text)
    {
        if (IsPlain(text))
        {
            return new DrawableText(text, [], false);
        }

        var composed = string.Concat(Composer.Compose(text));
        var clean = new StringBuilder(composed.Length);
        var missing = new List<string>();
        var turns = false;
        var letters = StringInfo.GetTextElementEnumerator(composed);
        while (letters.MoveNext())
        {
            var letter = letters.GetTextElement();
            var boxed = Rune.TryGetRuneAt(letter, 0, out var first) && IsLacking(first);
            foreach (var character in letter.EnumerateRunes())
            {
                var shown = boxed || !IsInvisible(character);
                turns |= !boxed && IsRightToLeft(character.Value);
                if (shown)
                {
                    clean.Append(character.ToString());
                }
            }
            var lacking = boxed
                ? letter
                : letter.EnumerateRunes().Where(c => !IsInvisible(c) && IsLacking(c)).Select(c => c.ToString()).FirstOrDefault();
            if (lacking is not null && !missing.Contains(lacking))
            {
                missing.Add(lacking);
            }
        }
        return new DrawableText(clean.ToString(), [.. missing], turns);
    }

    static bool IsPlain(string text)
    {
        foreach (var c in text)
        {
            if (c is < ' ' or > '~' && c is not '\n')
            {
                return false;
            }
        }
        return true;
    }

    static bool IsLacking(Rune character) =>
        !BuiltInFonts.Get(Face.Regular).Has(character) && !IsLayout(character.Value) && !IsInvisible(character);

    /// <summary>Blanks, line ends and U+2028 shape the lines and need no glyph.</summary>
    static bool IsLayout(int character) => character is ' ' or '\n' or '\r' or '\t' or 0x2028;

    /// <summary>Joiners, direction marks and variation selectors: they have no shape of their own.</summary>
    static bool IsInvisible(Rune character) =>
        Rune.GetUnicodeCategory(character) == UnicodeCategory.Format
        || character.Value is >= 0xFE00 and <= 0xFE0F or >= 0xE0100 and <= 0xE01EF;

    /// <summary>Hebrew, Arabic and their neighbours, and the direction marks.</summary>
    static bool IsRightToLeft(int c) =>
        c
            is >= 0x0590
                and <= 0x08FF
                or >= 0xFB1D
                and <= 0xFDFF
                or >= 0xFE70
                and <= 0xFEFC
                or >= 0x10800
                and <= 0x10FFF
                or >= 0x1E800
                and <= 0x1EFFF
                or 0x202B
                or 0x202E
                or 0x2067;
}
