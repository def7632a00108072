using Spoolbook.Pdf.Fonts;

namespace Spoolbook.Papers.Typesetting.Fonts;

/// <summary>The width of a text, kerning included, computed as the PDF sets it.</summary>
static class TextMeasure
{
    public static double Width(string text, Face face, double size, bool tabular)
    {
        var font = BuiltInFonts.Get(face);
        return TextSetting.Width(font, text, tabular) * size / font.UnitsPerEm;
    }

    /// <summary>From the top of a line of this height to its baseline, with the letters in the middle of the line.</summary>
    public static double Baseline(Face face, double size, double lineHeight)
    {
        var font = BuiltInFonts.Get(face);
        double above = font.Ascent * size / font.UnitsPerEm,
            below = -font.Descent * size / font.UnitsPerEm;
        return (lineHeight - above - below) / 2 + above;
    }
}
