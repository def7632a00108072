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
}
