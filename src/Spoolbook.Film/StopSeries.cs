using System.Globalization;

namespace Spoolbook.Film;

/// <summary>The numbers engraved on lenses for the powers of √2.</summary>
static class StopSeries
{
    // How close two aperture values must be to count as one: far finer than any lens ring.
    public const double Hair = 1e-9;

    const int First = -2;
    static readonly double[] _engraved = [0.5, 0.7, 1, 1.4, 2, 2.8, 4, 5.6, 8, 11, 16, 22, 32, 45, 64, 90, 128, 180, 256];

    public static double AvOf(double number)
    {
        var place = Array.IndexOf(_engraved, number);
        return place < 0 ? 2 * Math.Log2(number) : place + First;
    }

    /// <summary>The engraved number of a full stop; null between stops and beyond the series.</summary>
    public static double? Engraved(double av)
    {
        var whole = (int)Math.Round(av);
        return Math.Abs(av - whole) < Hair && whole >= First && whole < First + _engraved.Length ? _engraved[whole - First] : null;
    }

    /// <summary>The number of a full stop as it is written, beyond the series too.</summary>
    public static string Text(int av)
    {
        var number = Engraved(av) ?? Math.Pow(2, av / 2.0);
        return Number(number);
    }

    public static string Number(double number) => number.ToString("G4", CultureInfo.InvariantCulture);
}
