using System.Globalization;

namespace Spoolbook.Shoot.Records;

/// <summary>A colour to print with, and how well it reads on white paper.</summary>
/// <param name="Rgb">Red, green and blue, eight bits each, as sRGB: 0xRRGGBB, from 0 to 0xFFFFFF.</param>
public readonly record struct InkColour(int Rgb)
{
    /// <summary>
    /// The contrast that text of any size needs. Source: W3C, Web Content Accessibility Guidelines 2.2, success criterion 1.4.3 (level AA).
    /// </summary>
    public const double EnoughForText = 4.5;

    /// <summary>
    /// How bright it looks, from 0 for black to 1 for white. A grey printer keeps its brightness, so a colour that
    /// stands out from paper stands out in grey too. Source: W3C, Web Content Accessibility Guidelines 2.2, relative
    /// luminance.
    /// </summary>
    public double Luminance => (0.2126 * Linear(Rgb >> 16)) + (0.7152 * Linear(Rgb >> 8)) + (0.0722 * Linear(Rgb));

    /// <summary>
    /// Its contrast with white paper, from 1 for white to 21 for black. Source: W3C, Web Content Accessibility Guidelines 2.2, contrast
    /// ratio.
    /// </summary>
    public double ContrastOnPaper => 1.05 / (Luminance + 0.05);

    /// <summary>The colour itself, or the lightest of the same hue with at least that contrast with white paper.</summary>
    /// <param name="contrast">From 1 to 21.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not even black has that contrast.</exception>
    public InkColour Darkened(double contrast)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(contrast, 21);
        for (var part = 255; part > 0; part--)
        {
            var darker = new InkColour((Part(Rgb >> 16, part) << 16) | (Part(Rgb >> 8, part) << 8) | Part(Rgb, part));
            if (darker.ContrastOnPaper >= contrast)
            {
                return darker;
            }
        }

        return new InkColour(0);
    }

    /// <summary>As written in the sheet: <c>#7a3410</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"#{Rgb:x6}");

    static int Part(int channel, int part) => (channel & 255) * part / 255;

    // The threshold is the guideline's, which rounds the standard's 0.04045. No eight-bit value lies between.
    static double Linear(int channel)
    {
        var c = (channel & 255) / 255.0;
        return c <= 0.03928 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
    }
}
