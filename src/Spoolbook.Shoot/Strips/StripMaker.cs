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
    /// <param name="leftover">Film left at the end that is no short end where nobody mentions it.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="loaded"/> is not above zero.</exception>
    public static Strip Make(Production production, Roll roll, Footage loaded, Footage leftover)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(loaded.Frames, 1, nameof(loaded));

        var walk = RollWalk.Of(roll, loaded);
        var laid = new LaidFilm(walk, loaded, (take, body) => TakeExposure.Of(production, take, body).Stops);

        var thrown = roll.Unload?.ShortEnd?.Value == Remainder.Thrown;
        var segments = Sweep.Over(loaded, laid.Layers, laid.Stretches, thrown);
        if (!thrown && !IsMentioned(production, roll) && LeftOver(segments, loaded).Length <= leftover)
        {
            segments = Sweep.Over(loaded, laid.Layers, laid.Stretches, leftIsThrown: true);
        }

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

    // In the camera it may yet be shot, and what was kept, measured, loaded again or logged is a short end however short.
    static bool IsMentioned(Production production, Roll roll) =>
        roll.Unload is not { ShortEnd: null }
        || roll.Unload.Left is { Value.Frames: > 0 }
        || production.Rolls.Any(r => r.ShortEndOf?.Value == roll.Name.Value)
        || production.StockLog.Any(e => e.ShortEndOf?.Value == roll.Name.Value);

    // Fog or a loss in a reload can reach into film that would be left over.
    static Span LeftOver(ImmutableArray<Segment> segments, Footage loaded)
    {
        var last = segments[^1];
        return last.Account == Account.ShortEnd || last.Cause == WasteCause.End ? last.Span : new Span(loaded, loaded);
    }
}
