namespace Spoolbook.Film;

/// <summary>Light in stops: each doubles it. Positive is more light on the film, negative less, <see cref="Black"/> none.</summary>
public static class Stops
{
    /// <summary>No light: minus infinity, so anything added to black stays black.</summary>
    public const double Black = double.NegativeInfinity;

    // The decimal logarithm of two: a density of 0.301 halves the light.
    static readonly double _densityOfAStop = Math.Log10(2);

    /// <summary>Reads a number of stops: <c>1</c>, <c>-1</c>, <c>0.5</c>, <c>1/2</c> or <c>1 3/5</c>.</summary>
    public static Parsed<double, StopsFault> Parse(string text) => StopsForm.Read(text);

    /// <summary>log2 of the part of the light that gets through: 0.5 is -1 stop, 0 is black.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A negative fraction.</exception>
    public static double FromFraction(double fraction)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(fraction);
        return Math.Log2(fraction);
    }

    /// <summary>What a filter of that factor takes: factor 2 is -1 stop, factor 1 nothing.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A factor of zero or less.</exception>
    public static double FromFactor(double factor)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(factor);
        return -Math.Log2(factor);
    }

    /// <summary>The light that a neutral density takes: the density over log10 2. 0.3 is -0.9966 stops.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A negative density.</exception>
    public static double FromDensity(double density)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(density);
        return -density / _densityOfAStop;
    }
}
