namespace Spoolbook.Film;

/// <summary>How long raw stock must lie in its sealed can before it is opened, so that no water settles on it.</summary>
public static class WarmUp
{
    /// <summary>A rise in temperature up to which the shorter time will do, in degrees Celsius: a fridge to a room.</summary>
    public const int SmallRise = 14;

    /// <summary>The largest rise that the times are given for, in degrees Celsius: a freezer to a hot day.</summary>
    public const int LargeRise = 55;

    // Where the tables change from the narrow gauges to the wide.
    const int Narrow = 20;

    /// <summary>
    /// Hours for a can of one unit: 1 for a small rise and 1½ for a large one up to 16 mm, 3 and 5 in wider film,
    /// by the maker's table (Kodak, Storage and Handling of Unprocessed Film, KH19). Between the two rises the
    /// longer time holds.
    /// </summary>
    /// <param name="rise">Degrees Celsius by which it must warm up; none at or below zero.</param>
    public static Ratio Hours(Gauge gauge, int rise)
    {
        ArgumentNullException.ThrowIfNull(gauge);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(rise, LargeRise);
        var narrow = gauge.Width < Narrow;
        return rise <= 0 ? Ratio.Zero
            : rise <= SmallRise
                ? narrow ? 1
                    : 3
            : narrow ? new Ratio(3, 2)
            : 5;
    }
}
