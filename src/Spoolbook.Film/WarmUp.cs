namespace Spoolbook.Film;

/// <summary>How long raw stock warms up in its sealed can before anybody opens it. Opened cold, it collects water.</summary>
public static class WarmUp
{
    /// <summary>The rise in temperature that the shorter time covers, in degrees Celsius: from a fridge to a room.</summary>
    public const int SmallRise = 14;

    /// <summary>The largest rise that the maker gives times for, in degrees Celsius: from a freezer to a hot day.</summary>
    public const int LargeRise = 55;

    // Film up to this width has the times of the narrow gauges.
    const int Narrow = 20;

    /// <summary>
    /// Hours for a can of one unit: 1 for a small rise and 1½ for a large one up to 16 mm, 3 and 5 for wider film, by the
    /// maker's table (Kodak, Storage and Handling of Unprocessed Film, KH19). Between the two rises, take the longer time.
    /// </summary>
    /// <param name="rise">Degrees Celsius to warm up by; 0 hours at or below zero.</param>
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
