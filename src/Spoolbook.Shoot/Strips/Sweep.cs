using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Shoot.Strips;

/// <summary>Goes down the film once, from edge to edge of everything on it, and cuts it into segments.</summary>
sealed class Sweep
{
    readonly bool _leftIsThrown;
    readonly SortedDictionary<int, Layer> _takes = [];
    readonly SortedDictionary<(FrameCause Kind, int Index), Stretch> _ground = [];
    readonly ImmutableArray<Segment>.Builder _segments = ImmutableArray.CreateBuilder<Segment>();

    Sweep(bool leftIsThrown) => _leftIsThrown = leftIsThrown;

    /// <summary>The whole film as segments in order; no two neighbours are alike.</summary>
    public static ImmutableArray<Segment> Over(
        Footage loaded,
        IReadOnlyList<Layer> layers,
        IReadOnlyList<Stretch> stretches,
        bool leftIsThrown
    )
    {
        var sweep = new Sweep(leftIsThrown);
        var at = Footage.Zero;
        foreach (var (position, cross) in sweep.Edges(layers, stretches))
        {
            sweep.Cut(new Span(at, position));
            cross();
            at = position;
        }

        sweep.Cut(new Span(at, loaded));
        return sweep._segments.DrainToImmutable();
    }

    // The order of edges at one place does not matter: there is no film between them.
    IEnumerable<(Footage Position, Action Cross)> Edges(IReadOnlyList<Layer> layers, IReadOnlyList<Stretch> stretches)
    {
        var edges = new List<(Footage Position, Action Cross)>();
        foreach (var layer in layers.Where(l => !l.Span.IsEmpty))
        {
            edges.Add((layer.Span.From, () => _takes.Add(layer.Index, layer)));
            edges.Add((layer.Span.To, () => _takes.Remove(layer.Index)));
        }

        foreach (var (index, stretch) in stretches.Index())
        {
            edges.Add((stretch.Span.From, () => _ground.Add((stretch.Kind, index), stretch)));
            edges.Add((stretch.Span.To, () => _ground.Remove((stretch.Kind, index))));
        }

        return edges.OrderBy(e => e.Position.Frames);
    }

    void Cut(Span span)
    {
        if (span.IsEmpty)
        {
            return;
        }

        var next = SegmentOver(span);
        if (_segments.Count > 0 && AreAlike(_segments[^1], next))
        {
            _segments[^1] = next with { Span = new Span(_segments[^1].Span.From, span.To) };
        }
        else
        {
            _segments.Add(next);
        }
    }

    Segment SegmentOver(Span span)
    {
        ImmutableArray<Layer> layers = [.. _takes.Values];
        var owner = layers.IsEmpty ? null : layers.MaxBy(l => l.Take.Mark.Value);

        // Every frame has a ground: it went through the gate or it did not.
        var ground = _ground.Values.First();
        var ruined = ground.Kind <= FrameCause.Head;
        var (account, cause) = owner is null || ruined ? Fall(ground.Kind) : Fall(owner.Take.Mark.Value);
        return new Segment(span, layers, account, cause)
        {
            Owner = owner,
            Custody = owner is null || ruined ? ground.Custody : owner.Custody,
        };
    }

    (Account Account, WasteCause? Cause) Fall(FrameCause kind) =>
        kind switch
        {
            FrameCause.Fog => (Account.Waste, WasteCause.Fog),
            FrameCause.Tail => (Account.Waste, WasteCause.Tail),
            FrameCause.Head => (Account.Waste, WasteCause.Head),
            FrameCause.RunOff => (Account.Waste, WasteCause.RunOff),
            FrameCause.Passed => (Account.Waste, WasteCause.Gap),
            FrameCause.Left when _leftIsThrown => (Account.Waste, WasteCause.End),
            FrameCause.Left => (Account.ShortEnd, null),
            _ => throw new ArgumentOutOfRangeException(nameof(kind)),
        };

    static (Account Account, WasteCause? Cause) Fall(Mark mark) =>
        mark switch
        {
            Mark.Good => (Account.Good, null),
            Mark.Hold => (Account.Hold, null),
            Mark.NoGood => (Account.NoGood, null),
            Mark.Test => (Account.Waste, WasteCause.Test),
            _ => throw new ArgumentOutOfRangeException(nameof(mark)),
        };

    static bool AreAlike(Segment a, Segment b) =>
        a.Account == b.Account
        && a.Cause == b.Cause
        && a.Custody == b.Custody
        && a.Layers.Length == b.Layers.Length
        && a.Layers.Zip(b.Layers).All(pair => pair.First.Index == pair.Second.Index);
}
