using System.Globalization;

namespace Spoolbook.Film.Reckonings;

/// <summary>Writes the values of answers.</summary>
static class ReckoningText
{
    const double MillimetresPerInch = 25.4;

    /// <summary>A number to so many decimals, without trailing zeros.</summary>
    public static string Number(double value, int places)
    {
        if (double.IsInfinity(value))
        {
            return value > 0 ? "infinity" : "black";
        }

        var text = value.ToString("0." + new string('#', places), CultureInfo.InvariantCulture);
        return text == "-0" ? "0" : text;
    }

    /// <summary>Stops with their sign: <c>+1</c>, <c>-0.32</c>.</summary>
    public static string Stops(double stops)
    {
        var text = Number(stops, 2);
        return stops > 0 && text != "0" ? "+" + text : text;
    }

    /// <summary>
    /// A distance in front of a camera, to a tenth of an inch or a centimetre. Finer below a foot or a metre; past a hundred
    /// of them, no finer than a focus ring or a tape reads.
    /// </summary>
    public static ReckoningLine Distance(string label, double millimetres, ReckoningUnits units)
    {
        if (double.IsInfinity(millimetres))
        {
            return ReckoningLine.Of(label, "infinity");
        }

        return units == ReckoningUnits.Metres
            ? InMetres(label, millimetres)
            : new ReckoningLine(label, FeetAndInches(millimetres), "", millimetres / MillimetresPerInch / 12);
    }

    /// <summary>A length of film in feet and frames with decimal feet, or in metres.</summary>
    public static ReckoningLine Film(string label, Footage film, Gauge gauge, ReckoningUnits units) =>
        units == ReckoningUnits.Metres
            ? ReckoningLine.Of(label, film.Metres(gauge), 2, "m")
            : new ReckoningLine(label, film.FeetAndFrames(gauge), "ft+fr", film.Feet(gauge).ToDouble());

    static ReckoningLine InMetres(string label, double millimetres) =>
        new(
            label,
            millimetres is 0 or >= 1000 and < 100_000 ? Number(millimetres / 1000, 2)
                : millimetres < 1000 ? Number(Meaningful(millimetres / 1000), 6)
                : Number(Meaningful(millimetres / 1000), 0),
            "m",
            millimetres / 1000
        );

    // Three figures: depth is no better known than its circle of confusion.
    static double Meaningful(double figure)
    {
        var unit = Math.Pow(10, Math.Floor(Math.Log10(figure)) - 2);
        return Math.Round(figure / unit) * unit;
    }

    static string FeetAndInches(double millimetres)
    {
        var inches = millimetres / MillimetresPerInch;
        if (inches is > 0 and < 1)
        {
            return Number(Meaningful(inches), 6) + " in";
        }

        if (inches >= 1200)
        {
            return Number(Meaningful(inches / 12), 0) + " ft";
        }

        // Rounded to tenths first, so that 11.96 inches become a foot.
        var tenths = (long)Math.Round(millimetres / MillimetresPerInch * 10, MidpointRounding.AwayFromZero);
        var (feet, over) = Math.DivRem(tenths, 120);
        return string.Create(CultureInfo.InvariantCulture, $"{feet} ft {over / 10.0:0.#} in");
    }
}
