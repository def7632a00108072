using System.Globalization;

namespace Spoolbook.Pdf.Fonts;

/// <summary>
/// Sets a text in a font from left to right: kerned, accents over their letters, a box for each letter that the font lacks.
/// </summary>
public static class TextSetting
{
    /// <summary>How far the whole text moves the pen, in font units.</summary>
    public static int Width(TrueTypeFont font, string text, bool tabular)
    {
        var width = 0;
        if (IsPlain(text))
        {
            ushort previous = 0;
            var first = true;
            foreach (var character in text.EnumerateRunes())
            {
                var glyph = font.Glyph(character, tabular);
                width += (first ? 0 : font.Kerning(previous, glyph)) + font.Advance(glyph);
                (previous, first) = (glyph, false);
            }

            return width;
        }

        foreach (var set in Clusters(font, text, tabular))
        {
            width += set.Before + font.Advance(set.Glyph);
        }

        return width;
    }

    public static IEnumerable<SetGlyph> Set(TrueTypeFont font, string text, bool tabular) =>
        IsPlain(text) ? Letters(font, text, tabular) : Clusters(font, text, tabular);

    /// <summary>Latin, Greek, Cyrillic and punctuation, where no character combines with another.</summary>
    static bool IsPlain(string text)
    {
        foreach (var c in text)
        {
            if (
                c
                is not (
                    < '\u0300'
                    or >= '\u0370'
                    and < '\u0483'
                    or >= '\u048A'
                    and < '\u0530'
                    or >= '\u1E00'
                    and < '\u200C'
                    or >= '\u2010'
                    and < '\u202A'
                )
            )
            {
                return false;
            }
        }
        return true;
    }

    static IEnumerable<SetGlyph> Letters(TrueTypeFont font, string text, bool tabular)
    {
        ushort previous = 0;
        var first = true;
        foreach (var character in text.EnumerateRunes())
        {
            var glyph = font.Glyph(character, tabular);
            yield return new SetGlyph(glyph, character, first ? 0 : font.Kerning(previous, glyph));
            previous = glyph;
            first = false;
        }
    }

    static IEnumerable<SetGlyph> Clusters(TrueTypeFont font, string text, bool tabular)
    {
        ushort previous = 0;
        var first = true;
        for (var at = 0; at < text.Length;)
        {
            var length = StringInfo.GetNextTextElementLength(text, at);
            var characters = text.Substring(at, length).EnumerateRunes().ToList();
            var glyph = font.Glyph(characters[0], tabular);
            var kerning = first ? 0 : font.Kerning(previous, glyph);
            var set = new SetGlyph(glyph, characters[0], kerning) { Cluster = characters.Count > 1 ? text.Substring(at, length) : null };
            yield return characters.Count > 1 && font.Has(characters[0]) ? Accents.Put(font, set, characters) : set;
            previous = glyph;
            first = false;
            at += length;
        }
    }
}
