using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Shoot.Strips;

/// <summary>Finds the effects on a strip. Nobody has to write "dissolve" on the sheet.</summary>
public static class Effects
{
    /// <summary>
    /// The least exposure that counts as a full one, in stops from normal: a third of a stop under, the finest step of a lens or meter
    /// (common practice).
    /// </summary>
    public const double FullExposure = -1 / 3.0;

    // Below the rounding error of sums of powers: no exposure.
    const double Nothing = 1e-9;

    /// <summary>Every effect on a strip, in their order on the film.</summary>
    internal static ImmutableArray<Effect> Of(Strip strip)
    {
        var dissolves = Dissolves(strip).ToList();
        var inDissolve = dissolves.Select(d => (d.Layers[0].Index, d.Layers[1].Index)).ToHashSet();
        var closing = inDissolve.Select(d => d.Item1).ToHashSet();
        var opening = inDissolve.Select(d => d.Item2).ToHashSet();

        var fadesOut = strip.Layers.Where(l => !closing.Contains(l.Index)).Select(l => FadeOf(EffectKind.FadeOut, l, l.Closing));
        var fadesIn = strip.Layers.Where(l => !opening.Contains(l.Index)).Select(l => FadeOf(EffectKind.FadeIn, l, l.Opening));
        return
        [
            .. dissolves
                .Concat(Superimpositions(strip, inDissolve))
                .Concat(fadesOut.OfType<Effect>())
                .Concat(fadesIn.OfType<Effect>())
                .Concat(
                    strip
                        .Layers.Where(l => l is { IsLit: true, Span.IsEmpty: false, Take.HandCranked.Value: true })
                        .Select(l => new Effect(EffectKind.HandCranked, l.Span, [l]))
                )
                .OrderBy(e => (e.Span.From.Frames, e.Span.To.Frames, e.Layers[0].Index, e.Kind)),
        ];
    }

    static Effect? FadeOf(EffectKind kind, Layer layer, Span fade)
    {
        var onFilm = fade.Intersect(layer.Span);
        return onFilm.IsEmpty || !layer.IsLit ? null : new Effect(kind, onFilm, [layer]);
    }

    // A fade out and a fade in, shot in different passes, that meet on the film.
    static IEnumerable<Effect> Dissolves(Strip strip)
    {
        var pairs =
            from segment in strip.Segments
            where segment.Layers.Length > 1
            from outgoing in segment.Layers
            where outgoing.IsLit && outgoing.Closing.Overlaps(segment.Span)
            from incoming in segment.Layers
            where incoming.IsLit && incoming.Pass != outgoing.Pass
            where incoming.Opening.Intersect(segment.Span).Overlaps(outgoing.Closing)
            select (outgoing, incoming);
        return pairs.DistinctBy(p => (p.outgoing.Index, p.incoming.Index)).Select(p => DissolveOf(strip, p.outgoing, p.incoming));
    }

    static Effect DissolveOf(Strip strip, Layer outgoing, Layer incoming)
    {
        // A fade longer than its take, or cut off by the end of the roll, is on the film only where the take is.
        var (closing, opening) = (outgoing.Closing.Intersect(outgoing.Span), incoming.Opening.Intersect(incoming.Span));
        var span = new Span(Footage.Min(closing.From, opening.From), Footage.Max(closing.To, opening.To));

        double[] Together(Func<Layer, Footage, double> light) =>
            [.. Frames(span).Select(f => Flat(Passes.Composite([Light(outgoing, f, light), Light(incoming, f, light)])))];
        var levels = Together((layer, frame) => layer.StopsAt(frame));

        // The dissolve is not to blame for how its takes were exposed.
        var shutters = Together((layer, frame) => Stops.FromFraction(layer.OpeningAt(frame)));
        return new Effect(EffectKind.Dissolve, span, [outgoing, incoming])
        {
            Offset = incoming.Opening.From - outgoing.Closing.From,
            Worst = levels.MaxBy(Math.Abs),
            Dip = shutters.MaxBy(Math.Abs),
            Mean = Flat(levels.Average()),
            BurntOut = BurntOut(strip, span),
        };
    }

    static double Light(Layer layer, Footage frame, Func<Layer, Footage, double> light) =>
        layer.Span.Contains(frame) ? light(layer, frame) : Stops.Black;

    // Overlapping takes that are not the two of a dissolve, run by run of the same takes.
    static IEnumerable<Effect> Superimpositions(Strip strip, HashSet<(int Outgoing, int Incoming)> dissolves)
    {
        var runs = new List<(Span Span, ImmutableArray<Layer> Layers)>();
        foreach (var segment in strip.Segments)
        {
            ImmutableArray<Layer> lit = [.. segment.Layers.Where(l => l.IsLit)];
            if (lit.Length < 2 || IsDissolve(lit, dissolves))
            {
                continue;
            }

            if (runs.Count > 0 && runs[^1] is var last && last.Span.To == segment.Span.From && SameTakes(last.Layers, lit))
            {
                runs[^1] = (new Span(last.Span.From, segment.Span.To), lit);
            }
            else
            {
                runs.Add((segment.Span, lit));
            }
        }

        return runs.Select(r => SuperimpositionOf(strip, r.Span, r.Layers));
    }

    static bool IsDissolve(ImmutableArray<Layer> lit, HashSet<(int Outgoing, int Incoming)> dissolves) =>
        lit.Length == 2 && (dissolves.Contains((lit[0].Index, lit[1].Index)) || dissolves.Contains((lit[1].Index, lit[0].Index)));

    static bool SameTakes(ImmutableArray<Layer> a, ImmutableArray<Layer> b) => a.Select(l => l.Index).SequenceEqual(b.Select(l => l.Index));

    static Effect SuperimpositionOf(Strip strip, Span span, ImmutableArray<Layer> layers)
    {
        var runs = Composite.Over(strip, span).ToList();
        return new Effect(EffectKind.Superimposition, span, layers)
        {
            Worst = Flat(runs.Select(r => r.Stops).MaxBy(Math.Abs)),
            Mean = Flat(runs.Sum(r => r.Stops * r.Span.Length.Frames) / span.Length.Frames),
            BurntOut = BurntOut(strip, span),
        };
    }

    static Footage BurntOut(Strip strip, Span span)
    {
        var frames =
            from run in Composite.Over(strip, span)
            let full = strip.SegmentAt(run.Span.From).Layers.Count(l => l.StopsAt(run.Span.From) >= FullExposure - Nothing)
            where full > 1
            select run.Span.Length.Frames;
        return new Footage(frames.Sum());
    }

    static IEnumerable<Footage> Frames(Span span)
    {
        for (var at = span.From; at < span.To; at += new Footage(1))
        {
            yield return at;
        }
    }

    static double Flat(double stops) => Math.Abs(stops) < Nothing ? 0 : stops;
}
