using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Shoot.Strips;

/// <summary>The exposure of several layers over a frame: light adds up, stops do not.</summary>
public static class Composite
{
    /// <summary>The exposure of one frame, in stops from normal; negative infinity where no light reached it in a take.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The frame is not on the roll.</exception>
    public static double At(Strip strip, Footage frame) => Of(strip.SegmentAt(frame).Layers, frame);

    /// <summary>The exposure of one frame under layers that all cover it.</summary>
    public static double Of(IEnumerable<Layer> layers, Footage frame) => Passes.Composite(layers.Select(l => l.StopsAt(frame)));

    /// <summary>
    /// The exposure of a stretch as runs in order: one for each stretch without change, and one for each frame of a
    /// fade. A long take costs no more time than a short one.
    /// </summary>
    public static IEnumerable<ExposureRun> Over(Strip strip, Span span)
    {
        foreach (var segment in strip.SegmentsOver(span))
        {
            foreach (var run in Over(segment.Layers, segment.Span.Intersect(span)))
            {
                yield return run;
            }
        }
    }

    static IEnumerable<ExposureRun> Over(ImmutableArray<Layer> layers, Span span)
    {
        var changing = layers.SelectMany(l => new[] { l.Opening, l.Closing }).Where(s => s.Overlaps(span)).ToList();
        var edges = changing
            .SelectMany(s => new[] { s.From, s.To })
            .Where(span.Contains)
            .Append(span.From)
            .Distinct()
            .Order()
            .Append(span.To)
            .ToList();
        foreach (var (from, to) in edges.Zip(edges.Skip(1)))
        {
            var isChanging = changing.Exists(s => s.Contains(from));
            var step = isChanging ? new Footage(1) : to - from;
            for (var at = from; at < to; at += step)
            {
                yield return new ExposureRun(new Span(at, at + step), Of(layers, at));
            }
        }
    }
}
