namespace Spoolbook.Film.Exposures;

/// <summary>What a maker says of how slow a stock grows at long times.</summary>
public interface IReciprocity
{
    /// <summary>What it is, for the working: <c>the stock's table</c>.</summary>
    string Name { get; }

    /// <summary>The stops to open by at a time; null where the maker says nothing of it.</summary>
    double? CorrectionAt(double seconds);

    /// <summary>
    /// How long to hold the shutter open, in seconds, where the lens is not opened: until the film has what the metered
    /// time would give it without failure. Null where the maker says nothing of it.
    /// </summary>
    /// <param name="metered">The time that the meter gives, in seconds, above 0.</param>
    double? HeldFor(double metered);
}
