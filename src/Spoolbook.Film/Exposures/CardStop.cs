namespace Spoolbook.Film.Exposures;

/// <summary>A stop that a lens of the kit can be set to.</summary>
/// <param name="Stop">The stop to set.</param>
/// <param name="Filter">The neutral density in front; null where none is needed.</param>
/// <param name="Missing">Stops of light missing at the widest opening, in halves; zero where there is enough.</param>
public sealed record CardStop(Stop Stop, string? Filter, double Missing)
{
    /// <summary>Whether the kit has that neutral density; a usual one that it lacks is named all the same.</summary>
    public bool FilterInKit { get; init; }
}
