using System.Collections.Immutable;
using Spoolbook.Film;

namespace Spoolbook.Shoot.Records;

/// <summary>How a roll was loaded.</summary>
public sealed record Load(Place Place)
{
    /// <summary>When.</summary>
    public required Located<DateTime> On { get; init; }

    /// <summary>Its shooting day, where that is not its date.</summary>
    public Located<DateOnly>? Day { get; init; }

    /// <summary>Who, by a person's id.</summary>
    public Located<string>? By { get; init; }

    /// <summary>In what light.</summary>
    public Located<LoadingLight>? Light { get; init; }

    /// <summary>Film exposed and lost in loading; the first good frame comes after it.</summary>
    public Located<Footage>? Head { get; init; }

    /// <summary>Whether the loops were checked.</summary>
    public Located<bool>? LoopsSet { get; init; }

    /// <summary>Whether the pressure plate was closed.</summary>
    public Located<bool>? PlateClosed { get; init; }

    /// <summary>Whether the filter slot behind the lens had its holder in, with or without a filter.</summary>
    public Located<bool>? SlotFilled { get; init; }

    /// <summary>Whether somebody went through the ready list; null where nothing is written.</summary>
    public Located<bool>? Ready { get; init; }

    /// <summary>The points of the ready list that were not in order.</summary>
    public ImmutableArray<Located<ReadyPoint>> NotReady { get; init; } = [];

    /// <summary>The speed that the camera was set to after loading.</summary>
    public Located<Speed>? SpeedAfter { get; init; }

    /// <summary>The number of the line of the short form that said it, with four digits of that line; null for none.</summary>
    public Located<string>? Line { get; init; }
}
