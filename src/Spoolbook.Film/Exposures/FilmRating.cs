namespace Spoolbook.Film.Exposures;

/// <summary>An exposure index that was chosen beside the one on the can.</summary>
/// <param name="Can">The index of the stock as it is sold, above 0.</param>
/// <param name="Rated">The index that it is metered at, above 0.</param>
public readonly record struct FilmRating(double Can, double Rated)
{
    /// <summary>
    /// log2 of the can's index over the one it is rated at, as light that the film gets more than the can
    /// asks for: a 500 rated 250 gets 1 stop.
    /// </summary>
    public double StopsOver => Math.Log2(Can / Rated);
}
