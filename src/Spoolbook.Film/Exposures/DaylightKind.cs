namespace Spoolbook.Film.Exposures;

/// <summary>The kinds of daylight in the maker's exposure table (Eastman Kodak F-4017, 2016).</summary>
public enum DaylightKind
{
    /// <summary>Bright or hazy sun on light sand or snow.</summary>
    SnowOrSand,

    /// <summary>Bright or hazy sun, distinct shadows.</summary>
    BrightSun,

    /// <summary>Weak, hazy sun, soft shadows.</summary>
    WeakSun,

    /// <summary>Cloudy bright, no shadows.</summary>
    CloudyBright,

    /// <summary>Heavy overcast, or open shade.</summary>
    OvercastOrShade,
}
