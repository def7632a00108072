namespace Spoolbook.Film.Exposures;

/// <summary>The index a film is rated at, beside the one on its can.</summary>
/// <param name="Can">The index of the stock as it is sold, above 0.</param>
/// <param name="Rated">The index that it is metered at, above 0.</param>
public readonly record struct FilmRating(double Can, double Rated)
{
    /// <summary>
    /// log2 of the can's index over the rated one: the extra light that the film gets. A 500 rated 250 gets 1 stop
    /// more.
    /// </summary>
    public double StopsOver => Math.Log2(Can / Rated);

    /// <summary>The index to rate at for a push of n stops: EI × 2^n. 500 pushed one is 1000 (convention).</summary>
    public static double Pushed(double index, double stops) => index * Stops.ToFraction(stops);

    /// <summary>Stops from one index to another: 100 to 400 is 2, 125 to 64 is -0.97, which the trade calls 1.</summary>
    public static double StopsBetween(double from, double to) => Math.Log2(to / from);

    /// <summary>The arithmetic index of a DIN number: 10^((S − 1) / 10), 28° is 501 (GNU units, after ISO 6:1993).</summary>
    public static double OfDin(double degrees) => Math.Pow(10, (degrees - 1) / 10);

    /// <summary>The DIN number of an arithmetic index: 1 + 10 log10 S; 250 is 24.98°.</summary>
    public static double ToDin(double index) => 1 + (10 * Math.Log10(index));
}
