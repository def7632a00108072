using Spoolbook.Film;

namespace Spoolbook.Shoot.Records;

/// <summary>Film run without a picture, lens capped, to reach a place or to empty the spool.</summary>
public sealed record RunOff(Place Place) : LogEntry(Place)
{
    /// <summary>Where the film is after it.</summary>
    public required Located<Footage> To { get; init; }

    /// <summary>Whether the lens was capped, so that exposed frames take no more light.</summary>
    public Located<bool>? Capped { get; init; }

    /// <inheritdoc/>
    public override string Word => "run-off";
}
