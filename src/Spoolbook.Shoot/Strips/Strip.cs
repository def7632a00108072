using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Strips;

/// <summary>Where a frame falls in the account of a roll.</summary>
public enum Account
{
    /// <summary>G.</summary>
    Good,

    /// <summary>H.</summary>
    Hold,

    /// <summary>NG.</summary>
    NoGood,

    /// <summary>W: see <see cref="WasteCause"/>.</summary>
    Waste,

    /// <summary>SE: unexposed and kept, or still in the camera.</summary>
    ShortEnd,
}

/// <summary>Why a frame is waste.</summary>
public enum WasteCause
{
    /// <summary>Exposed in loading.</summary>
    Head,

    /// <summary>Exposed in unloading.</summary>
    Tail,

    /// <summary>Passed the gate between takes with nothing recorded of it.</summary>
    Gap,

    /// <summary>Run with the lens capped and never shot.</summary>
    RunOff,

    /// <summary>The door was opened.</summary>
    Fog,

    /// <summary>A take marked as a test.</summary>
    Test,

    /// <summary>Left over and thrown away.</summary>
    End,
}

/// <summary>
/// A take as it lies on the film. Its exposure in stops from normal may change along it: the base, times the
/// opening of a fade in at its start and of a fade out at its end.
/// </summary>
/// <param name="Take">The take.</param>
/// <param name="Index">Its place among the takes of the roll; from 0.</param>
/// <param name="Pass">The pass that it belongs to; from 1, one more after each rewind.</param>
/// <param name="Span">The film it lies on, by the strip's own positions.</param>
/// <param name="BaseStops">Stops from normal where no fade is under way; negative infinity under a closed shutter.</param>
/// <param name="FadeIn">Frames of its fade in; none if zero.</param>
/// <param name="FadeOut">Frames of its fade out; none if zero.</param>
/// <param name="On">The day it was shot.</param>
/// <param name="Body">The body it was shot with, by name; null where the sheet names none.</param>
/// <param name="By">Who kept the camera, by id; null where the sheet names nobody.</param>
public sealed record Layer(Take Take, int Index, int Pass, Span Span, double BaseStops, Footage FadeIn, Footage FadeOut, DateOnly On, string? Body, string? By);

/// <summary>Frames next to each other with the same layers and the same account.</summary>
/// <param name="Span">The frames.</param>
/// <param name="Layers">The layers over them, in the order in which they were shot.</param>
/// <param name="Account">Where they fall.</param>
/// <param name="Cause">Why they are waste; null where they are not.</param>
public sealed record Segment(Span Span, ImmutableArray<Layer> Layers, Account Account, WasteCause? Cause);

/// <summary>How the film moved in one entry of the log.</summary>
/// <param name="Entry">The entry.</param>
/// <param name="From">Where the film stood before it.</param>
/// <param name="To">Where it stood after it; before <paramref name="From"/> in a rewind.</param>
/// <param name="Pass">The pass during it; a rewind belongs to the pass that it ends.</param>
public sealed record Move(LogEntry Entry, Footage From, Footage To, int Pass);

/// <summary>A roll of film as a line of frames from 0 to what was loaded, and what each of them holds.</summary>
public sealed record Strip
{
    /// <summary>The roll.</summary>
    public required Roll Roll { get; init; }

    /// <summary>Film loaded.</summary>
    public required Footage Loaded { get; init; }

    /// <summary>The takes, in the order in which they were shot.</summary>
    public required ImmutableArray<Layer> Layers { get; init; }

    /// <summary>All the film in order: the spans follow one another from 0 to <see cref="Loaded"/>.</summary>
    public required ImmutableArray<Segment> Segments { get; init; }

    /// <summary>How the film moved, an entry each.</summary>
    public required ImmutableArray<Move> Moves { get; init; }

    /// <summary>Where the film stood at the end of the log.</summary>
    public required Footage Stand { get; init; }

    /// <summary>The farthest that the film ever ran.</summary>
    public required Footage Furthest { get; init; }

    /// <summary>Passes made; 1 where nothing was wound back.</summary>
    public required int Passes { get; init; }

    /// <summary>Film lost where the door was opened.</summary>
    public required ImmutableArray<Span> Fogged { get; init; }
}
