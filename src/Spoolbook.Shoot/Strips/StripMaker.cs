using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Strips;

/// <summary>Makes the strip of a roll from its log: what happened to each frame.</summary>
public static class StripMaker
{
    /// <summary>
    /// The strip of one roll. What the log puts outside the roll is trimmed, and told in
    /// <see cref="Strip.Slips"/>. The time it takes grows with the entries of the log and with the layers
    /// over each segment, never with the frames.
    /// </summary>
    /// <param name="production">Where the roll's bodies, marks and filters are described.</param>
    /// <param name="roll">The roll.</param>
    /// <param name="loaded">Film loaded.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="loaded"/> is not above zero.</exception>
    public static Strip Make(Production production, Roll roll, Footage loaded)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(loaded.Frames, 1, nameof(loaded));

        var walk = new LogWalk(roll, loaded, (take, body) => TakeExposure.BaseStops(production, take, body));
        walk.Walk();

        var tail = TailOf(roll.Unload, walk.Stand, loaded);
        var left = new Span(Footage.Max(walk.Furthest, tail.To), loaded).Within(loaded);
        var ground = new Ground(walk.Fogged, tail, walk.Heads, left, walk.RunOffs, roll.Unload?.ShortEnd?.Value == Remainder.Thrown);
        var segments = Sweep.Over(loaded, walk.Layers, ground);

        return new Strip
        {
            Roll = roll,
            Loaded = loaded,
            Layers = [.. walk.Layers],
            Segments = segments,
            Moves = [.. walk.Moves],
            Stand = walk.Stand,
            Furthest = walk.Furthest,
            Passes = walk.Pass,
            Fogged = [.. walk.Fogged],
            Left = LeftOver(segments, loaded),
            Stray = [.. walk.Stray.Select(s => new StrayLight(s.Entry, s.Span, LayersUnder(s.Span, walk.Layers.Take(s.LayersBefore))))],
            Slips = [.. walk.Slips, .. TailSlips(roll.Unload, loaded)],
        };
    }

    // In unloading the film at the gate is lost, onwards from where it stood; on a roll run off, its very end.
    // A roll wound back before it is taken out loses its tail there, over whatever is on that film.
    static Span TailOf(Unload? unload, Footage stand, Footage loaded)
    {
        var tail = unload?.Tail?.Value ?? Footage.Zero;
        var from = Footage.Min(stand, loaded - tail);
        return new Span(from, from + tail).Within(loaded);
    }

    static IEnumerable<Slip> TailSlips(Unload? unload, Footage loaded)
    {
        if (unload?.Tail is { } tail && tail.Value > loaded)
        {
            yield return new Slip(SlipKind.BeyondEnd, null, tail.Place, tail.Value, loaded);
        }
    }

    // Fog or a loss in threading can reach into what would have been left over.
    static Span LeftOver(ImmutableArray<Segment> segments, Footage loaded)
    {
        var last = segments[^1];
        return last.Account == Account.ShortEnd || last.Cause == WasteCause.End ? last.Span : new Span(loaded, loaded);
    }

    static ImmutableArray<Layer> LayersUnder(Span span, IEnumerable<Layer> layers) => [.. layers.Where(l => l.Span.Overlaps(span))];
}
