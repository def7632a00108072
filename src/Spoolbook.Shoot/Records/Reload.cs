using Spoolbook.Film;

namespace Spoolbook.Shoot.Records;

/// <summary>
/// The half-shot roll was taken out and threaded again, in the same or another body. Positions written
/// after it are read from the new zero.
/// </summary>
public sealed record Reload(Place Place) : LogEntry(Place)
{
    /// <summary>When.</summary>
    public Located<DateTime>? On { get; init; }

    /// <summary>Who threaded it.</summary>
    public Located<string>? By { get; init; }

    /// <summary>The body it went into, if another.</summary>
    public Located<string>? Body { get; init; }

    /// <summary>The light it was done in.</summary>
    public Located<LoadingLight>? Light { get; init; }

    /// <summary>
    /// How much farther down the film the new zero lies: a position p written after this entry is
    /// p + ZeroMoved on the film. Zero where the punched frame was found again; null where nobody said.
    /// </summary>
    public Located<Footage>? ZeroMoved { get; init; }

    /// <summary>Film lost to light in taking out and threading again, onwards from where the film stood.</summary>
    public Located<Footage>? Lost { get; init; }

    /// <summary>Where the film stands after threading, in the new counting; else where it stood plus what was lost.</summary>
    public Located<Footage>? To { get; init; }

    /// <inheritdoc/>
    public override string Word => "reload";
}
