using Spoolbook.Film;

namespace Spoolbook.Shoot.Records;

/// <summary>How a roll was taken out.</summary>
public sealed record Unload(Place Place)
{
    /// <summary>When.</summary>
    public required Located<DateTime> On { get; init; }

    /// <summary>The shooting day that it is booked on, where that is neither its date nor the night before it.</summary>
    public Located<DateOnly>? Day { get; init; }

    /// <summary>Who, by a person's id.</summary>
    public Located<string>? By { get; init; }

    /// <summary>In what light.</summary>
    public Located<LoadingLight>? Light { get; init; }

    /// <summary>Film exposed and lost in unloading, onwards from where the film stood, or at the very end of a roll run off.</summary>
    public Located<Footage>? Tail { get; init; }

    /// <summary>What became of the film left over, if any; kept unless it says thrown.</summary>
    public Located<Remainder>? ShortEnd { get; init; }
}
