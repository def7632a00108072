namespace Spoolbook.Film.Spools;

/// <summary>Default diameters of cores and thicknesses of film, in millimetres.</summary>
public static class FilmCore
{
    const double Inch = 25.4;

    /// <summary>The barrel of a 100 ft daylight spool, 1.25 in: from memory, measure your own.</summary>
    public const double DaylightSpool = 1.25 * Inch;

    /// <summary>
    /// Acetate film, 0.006 in with its emulsion (F. H. Richardson, Bluebook of Projection, 1935, gives 0.0055 to 0.006;
    /// International Projectionist, 1958, gives 0.0060 for processed black and white).
    /// </summary>
    public const double Acetate = 0.006 * Inch;

    /// <summary>
    /// Processed colour film on acetate, 0.0065 in (International Projectionist, 1958). No source gives raw stock, which may
    /// be as thick.
    /// </summary>
    public const double Colour = 0.0065 * Inch;
}
