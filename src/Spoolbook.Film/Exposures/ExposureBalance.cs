using System.Collections.Immutable;

namespace Spoolbook.Film.Exposures;

/// <summary>Everything that changes an exposure, term by term, and what it comes to.</summary>
/// <param name="Terms">In the order in which light meets them; only those that apply.</param>
public sealed record ExposureBalance(ImmutableArray<ExposureTerm> Terms)
{
    /// <summary>
    /// The sum in stops: negative where the lens must be opened by so much from what the meter gave, positive
    /// where it must be closed, and <see cref="Stops.Black"/> where no light reaches the film.
    /// </summary>
    public double Total => Terms.Sum(term => term.Stops);

    /// <summary>The stop to set where the meter asked for another: opened by what is lacking. Null where all is black.</summary>
    public Stop? StopToSet(Stop metered) => double.IsNegativeInfinity(Total) ? null : metered.OpenedBy(-Total);
}
