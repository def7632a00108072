namespace Spoolbook.Film.Exposures;

/// <summary>How slow a stock grows at long times, by its maker.</summary>
public interface IReciprocity
{
    /// <summary>Its name in the working: <c>the stock's table</c>.</summary>
    string Name { get; }

    /// <summary>The stops to open by at a time; null where the maker gives none.</summary>
    double? CorrectionAt(double seconds);

    /// <summary>
    /// How long to hold the shutter open, in seconds, if the lens is not opened: until the film has what the metered time
    /// would give it without failure. Null where the maker gives nothing for it.
    /// </summary>
    /// <param name="metered">The time that the meter gives, in seconds, above 0.</param>
    double? HeldFor(double metered);
}
