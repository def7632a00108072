using Spoolbook.Pdf.Fonts;

namespace Spoolbook.Papers.Typesetting.Fonts;

/// <summary>How wide a text is, kerning included: the same reckoning by which the press sets it.</summary>
static class TextMeasure
{
    public static double Width(string text, Face face, double size, bool tabular)
    {
        var font = FontShelf.Get(face);
        return TextSetting.Width(font, text, tabular) * size / font.UnitsPerEm;
    }

    /// <summary>From the top of a line of this height to its baseline, the letters standing in the line's middle.</summary>
    public static double Baseline(Face face, double size, double lineHeight)
    {
        var font = FontShelf.Get(face);
        double above = font.Ascent * size / font.UnitsPerEm,
            below = -font.Descent * size / font.UnitsPerEm;
        return (lineHeight - above - below) / 2 + above;
    }
}
