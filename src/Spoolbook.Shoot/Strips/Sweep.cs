using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Strips;

/// <summary>Goes down the film once, from edge to edge of whatever lies on it, and cuts it into segments.</summary>
sealed class Sweep
{
    readonly Ground _ground;
    readonly SortedDictionary<int, Layer> _open = [];
    readonly int[] _openGround = new int[Enum.GetValues<GroundKind>().Length];
    readonly ImmutableArray<Segment>.Builder _segments = ImmutableArray.CreateBuilder<Segment>();

    Sweep(Ground ground) => _ground = ground;

    /// <summary>The whole film as segments in order; neighbours differ in their layers or their account.</summary>
    public static ImmutableArray<Segment> Over(Footage loaded, IReadOnlyList<Layer> layers, Ground ground)
    {
        var sweep = new Sweep(ground);
        var at = Footage.Zero;
        foreach (var edge in Edges(layers, ground))
        {
            sweep.Cut(new Span(at, edge.At));
            sweep.Cross(edge);
            at = edge.At;
        }

        sweep.Cut(new Span(at, loaded));
        return sweep._segments.DrainToImmutable();
    }

    static IEnumerable<Edge> Edges(IReadOnlyList<Layer> layers, Ground ground)
    {
        var edges = new List<Edge>();
        foreach (var layer in layers.Where(l => !l.Span.IsEmpty))
        {
            edges.Add(new Edge(layer.Span.From, true, layer, default));
            edges.Add(new Edge(layer.Span.To, false, layer, default));
        }

        foreach (var (span, kind) in ground.Stretches().Where(s => !s.Span.IsEmpty))
        {
            edges.Add(new Edge(span.From, true, null, kind));
            edges.Add(new Edge(span.To, false, null, kind));
        }

        // The order among edges at one place does not matter: no segment lies between them.
        return edges.OrderBy(e => e.At.Frames);
    }

    void Cross(Edge edge)
    {
        if (edge.Layer is not { } layer)
        {
            _openGround[(int)edge.Kind] += edge.Opens ? 1 : -1;
        }
        else if (edge.Opens)
        {
            _open.Add(layer.Index, layer);
        }
        else
        {
            _open.Remove(layer.Index);
        }
    }

    void Cut(Span span)
    {
        if (span.IsEmpty)
        {
            return;
        }

        ImmutableArray<Layer> layers = [.. _open.Values];
        Mark? worst = layers.IsEmpty ? null : layers.Max(l => l.Take.Mark.Value);
        var (account, cause) = _ground.Fall(kind => _openGround[(int)kind] > 0, worst);
        if (_segments.Count > 0 && _segments[^1] is var last && last.Account == account && last.Cause == cause && SameTakes(last.Layers, layers))
        {
            _segments[^1] = last with { Span = new Span(last.Span.From, span.To) };
        }
        else
        {
            _segments.Add(new Segment(span, layers, account, cause));
        }
    }

    static bool SameTakes(ImmutableArray<Layer> a, ImmutableArray<Layer> b) =>
        a.Length == b.Length && a.Zip(b).All(pair => pair.First.Index == pair.Second.Index);

    readonly record struct Edge(Footage At, bool Opens, Layer? Layer, GroundKind Kind);
}
