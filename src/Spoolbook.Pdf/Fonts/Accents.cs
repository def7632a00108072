using System.Collections.Immutable;
using System.Text;

namespace Spoolbook.Pdf.Fonts;

/// <summary>
/// Sets accents on letters that the font has no accented glyph for. The font draws each accent to fit a small o. It
/// moves to the middle of its own letter, clear of the letter and of the accent before.
/// </summary>
static class Accents
{
    // The gap between a letter and its accent, and between two accents, as shares of the em.
    const double Clearance = 0.045,
        Between = 0.03;

    // An accent with its foot above this goes over the letter, one with its head below that goes under it, any other through it.
    const double Over = 0.4,
        Under = 0.05;

    // A third accent would run into the line above, so it and the rest go where the second is. More than eight are an ink blot.
    const int MostStacked = 2,
        MostDrawn = 8;

    // These are drawn for the letter's shoulder, or reach over two letters.
    static bool StaysAside(int mark) => mark is 0x0315 or 0x031A or 0x031B or 0x0358 or >= 0x035C and <= 0x0362;

    public static SetGlyph Put(TrueTypeFont font, SetGlyph letter, IReadOnlyList<Rune> characters)
    {
        double em = font.UnitsPerEm;
        var accents = characters
            .Skip(1)
            .Where(font.Has)
            .Take(MostDrawn)
            .Select(mark => (Character: mark, Glyph: font.Glyph(mark, tabular: false)))
            .ToList();
        if (accents.Any(accent => font.Bounds(accent.Glyph) is { } box && box.Bottom > Over * em))
        {
            letter = letter with { Glyph = WithoutDot(font, characters[0], letter.Glyph) };
        }

        var advance = font.Advance(letter.Glyph);
        var around = font.Bounds(letter.Glyph) ?? new GlyphBounds(0, 0, advance, 0);
        double top = around.Top + Clearance * em,
            bottom = around.Bottom - Clearance * em;
        int over = 0,
            under = 0;
        var placed = ImmutableArray.CreateBuilder<PlacedAccent>();
        foreach (var (character, glyph) in accents)
        {
            if (font.Bounds(glyph) is not { } mark)
            {
                continue;
            }

            var right = StaysAside(character.Value) ? advance : (around.Left + around.Right - mark.Left - mark.Right) / 2;
            var up = 0;
            if (mark.Bottom > Over * em)
            {
                up = (int)Math.Max(0, top - mark.Bottom);
                if (++over < MostStacked)
                {
                    top = mark.Top + up + Between * em;
                }
            }
            else if (mark.Top < Under * em)
            {
                up = (int)Math.Min(0, bottom - mark.Top);
                if (++under < MostStacked)
                {
                    bottom = mark.Bottom + up - Between * em;
                }
            }
            placed.Add(new PlacedAccent(glyph, right, up));
        }
        return letter with { Accents = placed.ToImmutable() };
    }

    /// <summary>An i or j loses its dot under an accent.</summary>
    static ushort WithoutDot(TrueTypeFont font, Rune letter, ushort glyph)
    {
        const int DotlessI = 0x0131,
            DotlessJ = 0x0237;
        var bare = new Rune(letter.Value is 'j' or 0x0458 ? DotlessJ : DotlessI);
        return letter.Value is 'i' or 'j' or 0x0456 or 0x0458 && font.Has(bare) ? font.Glyph(bare, tabular: false) : glyph;
    }
}
