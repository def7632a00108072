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

        var walk = new LogWalk(roll, loaded, (take, body) => TakeExposure.Of(production, take, body).Stops);
        walk.Walk();

        var thrown = roll.Unload?.ShortEnd?.Value == Remainder.Thrown;
        var segments = Sweep.Over(loaded, walk.Layers, walk.Stretches, thrown);

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
            Fogged = [.. walk.Stretches.Where(s => s.Kind == GroundKind.Fog).Select(s => s.Span)],
            Left = LeftOver(segments, loaded),
            Stray = [.. walk.Stray],
            Slips = [.. walk.Slips],
        };
    }

    // Fog or a loss in threading can reach into what would have been left over.
    static Span LeftOver(ImmutableArray<Segment> segments, Footage loaded)
    {
        var last = segments[^1];
        return last.Account == Account.ShortEnd || last.Cause == WasteCause.End ? last.Span : new Span(loaded, loaded);
    }
}
