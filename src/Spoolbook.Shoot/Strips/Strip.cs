using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Shoot.Strips;

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
