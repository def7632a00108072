namespace Spoolbook.Film.Spools;

/// <summary>Default diameters of cores and thicknesses of film, in millimetres.</summary>
public static class FilmCore
{
    const double Inch = 25.4;

    /// <summary>A 16 mm core of type T, 2 in, for rolls up to 400 ft (Eastman Kodak H-19, Cores and Spools).</summary>
    public const double TypeT = 2 * Inch;

    /// <summary>A 16 mm core of type Z, 3 in, for rolls over 400 ft (Eastman Kodak H-19).</summary>
    public const double TypeZ = 3 * Inch;

    /// <summary>The barrel of a 100 ft daylight spool, 1.25 in: from memory, measure your own.</summary>
    public const double DaylightSpool = 1.25 * Inch;

    /// <summary>Acetate film, 0.006 in with its emulsion (F. H. Richardson, Bluebook of Projection, 1935, gives 0.0055 to 0.006).</summary>
    public const double Acetate = 0.006 * Inch;

    /// <summary>Polyester film, 0.0053 in: derived from a table of reel capacities.</summary>
    public const double Polyester = 0.0053 * Inch;
}
