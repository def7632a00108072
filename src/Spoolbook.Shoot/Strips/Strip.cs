using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Shoot.Strips;

/// <summary>Frames next to each other with the same layers, in the same account, spent by the same hands.</summary>
/// <param name="Span">The frames.</param>
/// <param name="Layers">The layers over them, in the order in which they were shot.</param>
/// <param name="Account">Where they fall.</param>
/// <param name="Cause">Why they are waste; null where they are not.</param>
public sealed record Segment(Span Span, ImmutableArray<Layer> Layers, Account Account, WasteCause? Cause)
{
    /// <summary>
    /// The take that spent this film: of those over it the worst marked, since its mark holds, and of equals
    /// the first, since a later pass used no new film. Null where no take was shot.
    /// </summary>
    public Layer? Owner { get; init; }

    /// <summary>Whose film it is: of whoever fogged it, unloaded it, loaded it, shot it, ran it or left it, in this order.</summary>
    public required Custody Custody { get; init; }
}

/// <summary>
/// How the film moved in one entry of the log. Positions are the log's own words, put into the strip's
/// counting and not trimmed to the roll: a move may end before the head or beyond the end.
/// </summary>
/// <param name="Entry">The entry.</param>
/// <param name="From">Where the film stood before it.</param>
/// <param name="To">Where it stood after it; before <paramref name="From"/> in a rewind.</param>
/// <param name="Pass">The pass during it; a rewind belongs to the pass that it ends.</param>
public sealed record Move(LogEntry Entry, Footage From, Footage To, int Pass)
{
    /// <summary>
    /// How far the zero of the log's counting lies down the film at the end of the entry: a position of the
    /// strip less this is the position that the sheet and the dial tell. Zero until the film is threaded again.
    /// </summary>
    public Footage ZeroMoved { get; init; }

    /// <summary>The body that held the film at the end of the entry, by name; null where the sheet names none.</summary>
    public string? Body { get; init; }

    /// <summary>The move in a moment of the roll's walk.</summary>
    internal static Move Of(Moment moment) => new(moment.Entry!, moment.From, moment.To, moment.Before.Pass) { ZeroMoved = moment.After.Zero, Body = moment.After.Body };
}

/// <summary>Light that reached film outside any take.</summary>
/// <param name="Entry">The rewind or run-off during which it did.</param>
/// <param name="Span">The film that passed the open gate.</param>
/// <param name="Layers">Takes already on that film, in the order in which they were shot.</param>
public sealed record StrayLight(LogEntry Entry, Span Span, ImmutableArray<Layer> Layers);

/// <summary>A roll of film as a line of frames from 0 to what was loaded, and what each of them holds.</summary>
public sealed record Strip
{
    /// <summary>The roll.</summary>
    public required Roll Roll { get; init; }

    /// <summary>The roll's log as it was followed: when, in which body and in whose hands everything happened.</summary>
    public required RollWalk Walk { get; init; }

    /// <summary>Film loaded.</summary>
    public required Footage Loaded { get; init; }

    /// <summary>The takes, in the order in which they were shot.</summary>
    public required ImmutableArray<Layer> Layers { get; init; }

    /// <summary>All the film in order: the spans follow one another from 0 to <see cref="Loaded"/>.</summary>
    public required ImmutableArray<Segment> Segments { get; init; }

    /// <summary>How the film moved, an entry each.</summary>
    public required ImmutableArray<Move> Moves { get; init; }

    /// <summary>Where the film stood at the end of the log, as logged.</summary>
    public required Footage Stand { get; init; }

    /// <summary>The farthest that the film ever ran, as logged.</summary>
    public required Footage Furthest { get; init; }

    /// <summary>Passes made; 1 where nothing was wound back.</summary>
    public required int Passes { get; init; }

    /// <summary>Film lost where the door was opened, in the order in which it happened.</summary>
    public required ImmutableArray<Span> Fogged { get; init; }

    /// <summary>
    /// The film left over at the end of the roll: unexposed, kept or thrown away. What a roll cut from it is
    /// loaded with. Empty where nothing is left.
    /// </summary>
    public required Span Left { get; init; }

    /// <summary>Where film took light outside any take: wound back with the shutter open, or run on with the lens uncapped.</summary>
    public required ImmutableArray<StrayLight> Stray { get; init; }

    /// <summary>Where the log and the film cannot both be right, in the order of the log.</summary>
    public required ImmutableArray<LogContradiction> Contradictions { get; init; }

    /// <summary>The segment that holds a frame.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The frame is not on the roll.</exception>
    public Segment SegmentAt(Footage frame)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(frame, Footage.Zero);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(frame, Loaded);
        return Segments[FirstEndingAfter(frame)];
    }

    /// <summary>The segments that hold a frame of a stretch, in order.</summary>
    public IEnumerable<Segment> SegmentsOver(Span span)
    {
        for (var i = FirstEndingAfter(span.From); i < Segments.Length && Segments[i].Span.From < span.To; i++)
        {
            yield return Segments[i];
        }
    }

    // Halving, since the segments follow one another.
    int FirstEndingAfter(Footage frame)
    {
        var (low, high) = (0, Segments.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = Segments[middle].Span.To <= frame ? (middle + 1, high) : (low, middle);
        }

        return low;
    }
}
