namespace Spoolbook.Film.Exposures;

/// <summary>What is wrong with a written line of a stock's table.</summary>
public enum ReciprocityFault
{
    /// <summary>Not a time, a colon and stops.</summary>
    NotTwoParts,

    /// <summary>No time before the colon.</summary>
    NoTime,

    /// <summary>A time of zero before the colon.</summary>
    TimeOfNothing,

    /// <summary>No stops after the colon.</summary>
    NoStops,

    /// <summary>A corrected time that is shorter than the metered one.</summary>
    ShorterTime,

    /// <summary>Stops below zero: film at long times needs more light.</summary>
    LessLight,
}
