using System.Globalization;
using Spoolbook.Film;
using Spoolbook.Film.Scans;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Forms;

/// <summary>Sizes of scans and drives.</summary>
static class ScanForms
{
    // Twice the largest scanner there is, so that no product overflows.
    const int MostPixels = 32_768;
    const string NumberPattern = "[0-9]+([.][0-9]+)?";

    public static readonly Form<Raster> Raster = new(
        SheetChecks.BadNumber,
        Sentence.Of("sheet/bad-number.value.raster"),
        Sentence.Of("sheet/bad-number.help.raster"),
        FormJson.Text("^[0-9]{1,5} *[xX×] *[0-9]{1,5}$"),
        ARaster
    );

    public static readonly Form<int> Bits = new(
        SheetChecks.BadNumber,
        Sentence.Of("sheet/bad-number.value.bits"),
        Sentence.Of("sheet/bad-number.help.bits"),
        FormJson.Whole(8, 16, "^(8|10|12|16)$"),
        CountOfBits
    );

    /// <summary>The size of a drive, in gigabytes.</summary>
    public static readonly Form<Ratio> Drive = new(
        SheetChecks.BadNumber,
        Sentence.Of("sheet/bad-number.value.drive"),
        Sentence.Of("sheet/bad-number.help.drive"),
        FormJson.Text($"^(none|{NumberPattern} *[GT]B)$"),
        ADrive
    );

    /// <summary>The size of a frame's file, in megabytes.</summary>
    public static readonly Form<Ratio> FrameSize = new(
        SheetChecks.BadNumber,
        Sentence.Of("sheet/bad-number.value.frame-size"),
        Sentence.Of("sheet/bad-number.help.frame-size"),
        FormJson.Text($"^{NumberPattern} *MB$"),
        AFrameSize
    );

    public static readonly Form<Ratio> SoundRatio = new(
        SheetChecks.BadNumber,
        Sentence.Of("sheet/bad-number.value.sound-ratio"),
        Sentence.Of("sheet/bad-number.help.sound-ratio"),
        FormJson.Number("^0*[1-9][0-9]{0,5}(/0*[1-9][0-9]{0,5})?$"),
        ASoundRatio
    );

    static bool ARaster(string text, ReadingContext context, out Raster value)
    {
        value = default;
        if (
            text.Split('x', 'X', '×') is not [var width, var height]
            || !Whole(width.TrimEnd(' '), out var across)
            || !Whole(height.TrimStart(' '), out var along)
        )
        {
            return false;
        }

        value = new Raster(across, along);
        return across <= MostPixels && along <= MostPixels;
    }

    static bool CountOfBits(string text, ReadingContext context, out int value) => Whole(text, out value) && value is 8 or 10 or 12 or 16;

    static bool ADrive(string text, ReadingContext context, out Ratio value)
    {
        value = Ratio.Zero;
        if (text == "none")
        {
            return true;
        }

        if (AnAmount(text, "TB", out value))
        {
            value *= 1000;
            return true;
        }

        return AnAmount(text, "GB", out value);
    }

    static bool AFrameSize(string text, ReadingContext context, out Ratio value) => AnAmount(text, "MB", out value);

    static bool ASoundRatio(string text, ReadingContext context, out Ratio value)
    {
        value = Ratio.One;
        var parts = text.Split('/');
        if (parts.Length > 2 || !Whole(parts[0], out var above) || !Whole(parts[^1], out var below))
        {
            return false;
        }

        value = parts.Length == 1 ? above : new Ratio(above, below);
        return true;
    }

    static bool AnAmount(string text, string unit, out Ratio value)
    {
        value = Ratio.Zero;
        return text.EndsWith(unit, StringComparison.Ordinal)
            && NumberForms.TryDecimal(text[..^unit.Length].TrimEnd(' '), out value)
            && value.Sign > 0;
    }

    static bool Whole(string text, out int value) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out value) && value is > 0 and <= 999_999;
}
