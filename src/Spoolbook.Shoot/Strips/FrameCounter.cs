using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Strips;

/// <summary>Checks the frame counter: exact, zeroed by hand, and back at zero after the body's number of frames.</summary>
/// <remarks>
/// A rewind with <c>counter-zeroed</c> says that the counter read zero at the start of the pass that it rewinds: at the
/// start of the first take that it goes back into. A reload loses the counter's zero. After a wrong reading the next
/// may fit it or the count before it, so that one slip is one finding.
/// </remarks>
public static class FrameCounter
{
    /// <summary>Every reading of the counter, in the order of the log.</summary>
    public static ImmutableArray<CounterReading> Readings(Production production, Strip strip)
    {
        var zeroed = ZeroedAt(strip);
        var readings = ImmutableArray.CreateBuilder<CounterReading>();
        Footage? zero = null;
        Footage? doubted = null;
        foreach (var move in strip.Moves)
        {
            (zero, doubted) =
                move.Entry is Reload ? (null, null)
                : zeroed.TryGetValue(move, out var here) ? (here, null)
                : (zero, doubted);
            if (move.Entry.Counter is { } read)
            {
                var reading = HeldAgainst(move, read.Value, [zero, doubted], production.BodyNamed(move.Body)?.CounterWraps?.Value);
                readings.Add(reading);
                (zero, doubted) =
                    reading.Expected is null || reading.Off != 0 ? (move.To - new Footage(read.Value), zero) : (zero, doubted);
            }
        }

        return readings.DrainToImmutable();
    }

    /// <summary>Rewinds in the camera that start another pass with no word of the counter being zeroed before.</summary>
    public static IEnumerable<Rewind> NotZeroed(Strip strip) =>
        from move in strip.Moves
        where move.To < move.From
        let rewind = move.Entry as Rewind
        where rewind is not null && rewind.InDark?.Value != true && rewind.CounterZeroed?.Value != true
        select rewind;

    // After a wrong reading, nobody knows whether it or the position was wrong: the next may fit either.
    static CounterReading HeldAgainst(Move move, long read, Footage?[] zeros, long? wraps) =>
        zeros.OfType<Footage>().Select(zero => Held(move, read, zero, wraps)).MinBy(r => Math.Abs(r.Off)) ?? Held(move, read, null, wraps);

    static CounterReading Held(Move move, long read, Footage? zero, long? wraps)
    {
        if (zero is not { } start)
        {
            return new CounterReading(move, read, null, 0);
        }

        var run = (move.To - start).Frames;
        if (wraps is not > 0)
        {
            return new CounterReading(move, read, run, read - run);
        }

        var round = wraps.Value;
        var off = Around(read - run, round);
        return new CounterReading(move, read, Around(run, round), off > round / 2 ? off - round : off);
    }

    static long Around(long frames, long wraps) => ((frames % wraps) + wraps) % wraps;

    // The takes at whose start the counter read zero, according to the rewind after them.
    static Dictionary<Move, Footage> ZeroedAt(Strip strip)
    {
        var zeroed = new Dictionary<Move, Footage>(ReferenceEqualityComparer.Instance);
        var thisPass = new List<(Move Move, Layer Layer)>();
        var takes = 0;
        foreach (var move in strip.Moves)
        {
            if (move.Entry is Take)
            {
                thisPass.Add((move, strip.Layers[takes++]));
            }
            else if (move.To < move.From)
            {
                var first = thisPass.FirstOrDefault(t => t.Layer.Written.To > move.To);
                if (move.Entry is Rewind { CounterZeroed.Value: true } && first.Move is not null)
                {
                    zeroed[first.Move] = first.Layer.Written.From;
                }

                thisPass.Clear();
            }
        }

        return zeroed;
    }
}
