using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Shoot.Strips;

/// <summary>Makes the strip of a roll from its log: what happened to each frame.</summary>
public static class StripMaker
{
    /// <summary>
    /// The strip of one roll. What the log puts outside the roll is trimmed and reported in
    /// <see cref="Strip.Contradictions"/>. The time grows with the entries of the log and with the layers over each
    /// segment, never with the frames.
    /// </summary>
    /// <param name="production">For the roll's bodies, marks and filters.</param>
    /// <param name="roll">The roll.</param>
    /// <param name="loaded">Film loaded.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="loaded"/> is not above zero.</exception>
    public static Strip Make(Production production, Roll roll, Footage loaded)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(loaded.Frames, 1, nameof(loaded));

        var walk = RollWalk.Of(roll, loaded);
        var laid = new LaidFilm(walk, loaded, (take, body) => TakeExposure.Of(production, take, body).Stops);

        var thrown = roll.Unload?.ShortEnd?.Value == Remainder.Thrown;
        var segments = Sweep.Over(loaded, laid.Layers, laid.Stretches, thrown);

        return new Strip
        {
            Roll = roll,
            Walk = walk,
            Loaded = loaded,
            Layers = [.. laid.Layers],
            Segments = segments,
            Moves = [.. walk.Moments.Select(Move.Of)],
            Stand = walk.EndOfLog.Position ?? Footage.Zero,
            Furthest = walk.End.Furthest,
            Passes = walk.End.Pass,
            Fogged = [.. laid.Stretches.Where(s => s.Kind == FrameCause.Fog).Select(s => s.Span)],
            Left = LeftOver(segments, loaded),
            Stray = [.. laid.Stray],
            Contradictions = [.. laid.Contradictions],
        };
    }

    // Fog or a loss in a reload can reach into film that would be left over.
    static Span LeftOver(ImmutableArray<Segment> segments, Footage loaded)
    {
        var last = segments[^1];
        return last.Account == Account.ShortEnd || last.Cause == WasteCause.End ? last.Span : new Span(loaded, loaded);
    }
}
