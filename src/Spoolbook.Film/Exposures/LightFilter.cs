using System.Collections.Immutable;

namespace Spoolbook.Film.Exposures;

/// <summary>A named filter: its stops and its colour shift.</summary>
/// <param name="Name">As it is engraved: <c>85B</c>.</param>
/// <param name="Stops">The light that it takes, in the maker's thirds: 0 or less.</param>
/// <param name="Mireds">Its shift in mireds: warmer above 0, bluer below.</param>
public sealed record LightFilter(string Name, double Stops, double Mireds)
{
    /// <summary>
    /// Colour conversion filters (Eastman Kodak's slides on filters; a colour meter's manual gives the shifts
    /// and, for the 80D, two thirds of a stop instead of one) and light-balancing filters.
    /// </summary>
    public static ImmutableArray<LightFilter> All { get; } =
    [
        InThirds("80A", 6, -131),
        InThirds("80B", 5, -112),
        InThirds("80C", 3, -81),
        InThirds("80D", 1, -56),
        InThirds("85C", 1, 81),
        InThirds("85", 2, 112),
        InThirds("85B", 2, 131),
        InThirds("85N3", 5, 112),
        InThirds("85N6", 8, 112),
        InThirds("85N9", 11, 112),
        InThirds("81", 1, 9),
        InThirds("81A", 1, 18),
        InThirds("81B", 1, 27),
        InThirds("81C", 1, 35),
        InThirds("81D", 2, 42),
        InThirds("81EF", 2, 52),
        InThirds("82", 1, -10),
        InThirds("82A", 1, -21),
        InThirds("82B", 2, -32),
        InThirds("82C", 2, -45),
    ];

    /// <summary>The filter of that name, in any case; null for a filter that is not tabled.</summary>
    public static LightFilter? Named(string name) =>
        All.FirstOrDefault(filter => filter.Name.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>A colour temperature in mireds: a million over kelvin.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A temperature that is not above zero.</exception>
    public static double MiredsOf(double kelvin)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(kelvin);
        return 1e6 / kelvin;
    }

    /// <summary>The shift in mireds from one colour temperature to another.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A temperature that is not above zero.</exception>
    public static double ShiftBetween(double fromKelvin, double toKelvin) => MiredsOf(toKelvin) - MiredsOf(fromKelvin);

    static LightFilter InThirds(string name, int thirds, double mireds) => new(name, -thirds / 3.0, mireds);
}
