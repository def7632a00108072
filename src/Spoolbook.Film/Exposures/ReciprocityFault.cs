namespace Spoolbook.Film.Exposures;

/// <summary>What is wrong with a written line of a stock's table.</summary>
public enum ReciprocityFault
{
    /// <summary>Not a time, a colon and stops.</summary>
    NotTwoParts,

    /// <summary>No time above zero before the colon.</summary>
    NoTime,

    /// <summary>No stops of zero or more after the colon.</summary>
    NoStops,
}
