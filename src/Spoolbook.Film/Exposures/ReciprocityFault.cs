namespace Spoolbook.Film.Exposures;

/// <summary>The ways in which a written line of a stock's table fails to be one.</summary>
public enum ReciprocityFault
{
    /// <summary>Not a time, a colon and stops.</summary>
    NotTwoParts,

    /// <summary>No time above nothing before the colon.</summary>
    NoTime,

    /// <summary>No stops of nothing or more after the colon.</summary>
    NoStops,
}
