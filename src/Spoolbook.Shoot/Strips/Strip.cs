using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Shoot.Strips;

/// <summary>A roll of film as a line of frames from 0 to what was loaded, with what is on each.</summary>
public sealed record Strip
{
    /// <summary>The roll.</summary>
    public required Roll Roll { get; init; }

    /// <summary>The walk of the roll's log: when, in which body and in whose hands everything happened.</summary>
    public required RollWalk Walk { get; init; }

    /// <summary>Film loaded.</summary>
    public required Footage Loaded { get; init; }

    /// <summary>The takes, in the order shot.</summary>
    public required ImmutableArray<Layer> Layers { get; init; }

    /// <summary>All the film in order: the spans follow each other from 0 to <see cref="Loaded"/>.</summary>
    public required ImmutableArray<Segment> Segments { get; init; }

    /// <summary>How the film moved, an entry each.</summary>
    public required ImmutableArray<Move> Moves { get; init; }

    /// <summary>Where the film is at the end of the log, as logged.</summary>
    public required Footage Stand { get; init; }

    /// <summary>The farthest that the film ran, as logged.</summary>
    public required Footage Furthest { get; init; }

    /// <summary>Passes made; 1 without a rewind.</summary>
    public required int Passes { get; init; }

    /// <summary>Film lost where the door was opened, in the order in which it happened.</summary>
    public required ImmutableArray<Span> Fogged { get; init; }

    /// <summary>
    /// The film left over at the end of the roll: unexposed, kept or thrown away. The length of a roll cut from it.
    /// Empty where nothing is left.
    /// </summary>
    public required Span Left { get; init; }

    /// <summary>Where film saw light outside any take: rewound with the shutter open, or run on with the lens uncapped.</summary>
    public required ImmutableArray<StrayLight> Stray { get; init; }

    /// <summary>Where the log and the film contradict each other, in the order of the log.</summary>
    public required ImmutableArray<LogContradiction> Contradictions { get; init; }

    /// <summary>The segment of a frame.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The frame is not on the roll.</exception>
    public Segment SegmentAt(Footage frame)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(frame, Footage.Zero);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(frame, Loaded);
        return Segments[FirstEndingAfter(frame)];
    }

    /// <summary>The segments with frames in a stretch, in order.</summary>
    public IEnumerable<Segment> SegmentsOver(Span span)
    {
        for (var i = FirstEndingAfter(span.From); i < Segments.Length && Segments[i].Span.From < span.To; i++)
        {
            yield return Segments[i];
        }
    }

    /// <summary>Frames of a take that are in the account as good, whichever good take over them owns them.</summary>
    public Footage GoodFilmOf(Layer layer) =>
        new(SegmentsOver(layer.Span).Where(s => s.Account == Account.Good).Sum(s => s.Span.Intersect(layer.Span).Length.Frames));

    /// <summary>
    /// Film of a take that counts as another take over it is marked, since that mark is worse: each stretch with that take,
    /// in order. Film that is waste anyway is not among it.
    /// </summary>
    public IEnumerable<(Span Span, Layer By)> CountedWorse(Layer layer)
    {
        (Span Span, Layer By)? run = null;
        foreach (var segment in SegmentsOver(layer.Span))
        {
            if (
                segment is not { Account: Account.Hold or Account.NoGood, Owner: { } owner }
                || owner.Take.Mark.Value <= layer.Take.Mark.Value
            )
            {
                continue;
            }

            var span = segment.Span.Intersect(layer.Span);
            if (run is { } begun && begun.Span.To == span.From && ReferenceEquals(begun.By, owner))
            {
                run = (new Span(begun.Span.From, span.To), owner);
                continue;
            }

            if (run is { } whole)
            {
                yield return whole;
            }

            run = (span, owner);
        }

        if (run is { } last)
        {
            yield return last;
        }
    }

    // A binary search, as the segments are in order.
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
