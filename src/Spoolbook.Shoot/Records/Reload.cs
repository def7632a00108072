using Spoolbook.Film;

namespace Spoolbook.Shoot.Records;

/// <summary>
/// The half-shot roll was unloaded and threaded again, in the same or another body. Later positions count from the new
/// zero.
/// </summary>
public sealed record Reload(Place Place) : LogEntry(Place)
{
    /// <summary>When.</summary>
    public Located<DateTime>? On { get; init; }

    /// <summary>Who threaded it.</summary>
    public Located<string>? By { get; init; }

    /// <summary>The body that it went into, if another.</summary>
    public Located<string>? Body { get; init; }

    /// <summary>The light that it was done in.</summary>
    public Located<LoadingLight>? Light { get; init; }

    /// <summary>
    /// How much farther down the film the new zero is: a position p written after this entry is p + ZeroMoved on the
    /// film. Below zero where the new zero is nearer the head; zero where the punched frame was found again; null where it is not written.
    /// </summary>
    public Located<Footage>? ZeroMoved { get; init; }

    /// <summary>Film lost to light in the reload, onwards from where the film was.</summary>
    public Located<Footage>? Lost { get; init; }

    /// <summary>Where the film is after threading, counted from the new zero; else where it was plus what was lost.</summary>
    public Located<Footage>? To { get; init; }

    /// <inheritdoc/>
    public override string Word => "reload";
}
