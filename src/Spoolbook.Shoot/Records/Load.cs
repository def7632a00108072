using Spoolbook.Film;

namespace Spoolbook.Shoot.Records;

/// <summary>How a roll was loaded.</summary>
public sealed record Load(Place Place)
{
    /// <summary>When.</summary>
    public required Located<DateTime> On { get; init; }

    /// <summary>The shooting day that it is booked on, where that is not its date.</summary>
    public Located<DateOnly>? Day { get; init; }

    /// <summary>Who, by a person's id.</summary>
    public Located<string>? By { get; init; }

    /// <summary>In what light.</summary>
    public Located<LoadingLight>? Light { get; init; }

    /// <summary>Film exposed and lost in loading; the roll's first good frame lies after it.</summary>
    public Located<Footage>? Head { get; init; }

    /// <summary>Whether the loops were seen to be set.</summary>
    public Located<bool>? LoopsSet { get; init; }

    /// <summary>Whether the pressure plate was closed.</summary>
    public Located<bool>? PlateClosed { get; init; }

    /// <summary>Whether the slot for filters behind the lens held its holder, with a filter or without.</summary>
    public Located<bool>? SlotFilled { get; init; }

    /// <summary>The speed set after loading at the loading speed.</summary>
    public Located<Speed>? SpeedAfter { get; init; }
}
