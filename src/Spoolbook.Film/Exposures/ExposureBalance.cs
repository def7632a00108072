using System.Collections.Immutable;

namespace Spoolbook.Film.Exposures;

/// <summary>Everything that changes an exposure, term by term, and the sum.</summary>
/// <param name="Terms">In the order light meets them; only those that apply.</param>
public sealed record ExposureBalance(ImmutableArray<ExposureTerm> Terms)
{
    /// <summary>
    /// The sum in stops: below zero, open up from what the meter gave; above zero, close down;
    /// <see cref="Stops.Black"/> where no light reaches the film.
    /// </summary>
    public double Total => Terms.Sum(term => term.Stops);

    /// <summary>The stop to set, from the stop that the meter gave. Null where all is black.</summary>
    public Stop? StopToSet(Stop metered) => double.IsNegativeInfinity(Total) ? null : metered.OpenedBy(-Total);
}
