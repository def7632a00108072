namespace Spoolbook.Film.Tests;

/// <summary>Cores and thicknesses of film that makers publish, in millimetres.</summary>
static class PublishedCores
{
    const double Inch = 25.4;

    /// <summary>A 16 mm core of type T, 2 in, for rolls up to 400 ft (Eastman Kodak H-19, Cores and Spools).</summary>
    public const double TypeT = 2 * Inch;

    /// <summary>A 16 mm core of type Z, 3 in, for rolls over 400 ft (Eastman Kodak H-19).</summary>
    public const double TypeZ = 3 * Inch;

    /// <summary>Polyester film, 0.0053 in: what a table of reel capacities implies.</summary>
    public const double Polyester = 0.0053 * Inch;
}
