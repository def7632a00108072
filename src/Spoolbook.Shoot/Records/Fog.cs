using Spoolbook.Film;

namespace Spoolbook.Shoot.Records;

/// <summary>The door was opened in the light: film on both sides of the gate is lost.</summary>
public sealed record Fog(Place Place) : LogEntry(Place)
{
    /// <summary>Film lost that had gone through the gate (towards the head).</summary>
    public required Located<Footage> Before { get; init; }

    /// <summary>Film lost that had not yet gone through (towards the tail).</summary>
    public required Located<Footage> After { get; init; }

    /// <inheritdoc/>
    public override string Word => "fog";
}
