namespace Spoolbook.Film.Tests;

/// <summary>Grey filters, by their density.</summary>
static class NeutralDensity
{
    /// <summary>The part of the light that passes: 10^−density.</summary>
    /// <param name="density">0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A negative density.</exception>
    public static double Transmittance(double density)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(density);
        return Math.Pow(10, -density);
    }

    /// <summary>The filter factor: 10^density.</summary>
    /// <inheritdoc cref="Transmittance" path="/param"/>
    /// <inheritdoc cref="Transmittance" path="/exception"/>
    public static double Factor(double density) => 1 / Transmittance(density);

    /// <summary>
    /// The stops as filters are tabled: a third for each 0.1. The exact logarithm, which exposures are computed with,
    /// is up to 0.02 of a stop less.
    /// </summary>
    /// <inheritdoc cref="Transmittance" path="/param"/>
    /// <inheritdoc cref="Transmittance" path="/exception"/>
    /// <returns>0 or less.</returns>
    public static double TabledStops(double density) => Stops.ToThird(Stops.FromDensity(density));
}
