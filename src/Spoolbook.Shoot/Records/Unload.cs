using Spoolbook.Film;

namespace Spoolbook.Shoot.Records;

/// <summary>How a roll was unloaded.</summary>
public sealed record Unload(Place Place)
{
    /// <summary>When.</summary>
    public required Located<DateTime> On { get; init; }

    /// <summary>Its shooting day, where that is neither its date nor the night before it.</summary>
    public Located<DateOnly>? Day { get; init; }

    /// <summary>Who, by a person's id.</summary>
    public Located<string>? By { get; init; }

    /// <summary>In what light.</summary>
    public Located<LoadingLight>? Light { get; init; }

    /// <summary>
    /// Film exposed and lost in unloading, onwards from where the film was, or at the very end of a roll that was run
    /// off.
    /// </summary>
    public Located<Footage>? Tail { get; init; }

    /// <summary>What happened to film left over, if any; by default it was kept.</summary>
    public Located<Remainder>? ShortEnd { get; init; }

    /// <summary>Film in the short end's can as it was measured; null where nobody did.</summary>
    public Located<Footage>? Left { get; init; }

    /// <summary>The number of the line of the short form that said it, with four digits of that line; null for none.</summary>
    public Located<string>? Line { get; init; }
}
