using System.Collections.Immutable;

namespace Spoolbook.Film.Exposures;

/// <summary>How much more exposure a stock needs at long or short times, as its maker tables it.</summary>
/// <param name="Seconds">The exposure time, above 0.</param>
/// <param name="Stops">The stops to open by at that time, 0 or more.</param>
public readonly record struct ReciprocityPoint(double Seconds, double Stops)
{
    /// <summary>A line of a stock's table as it is written in one word: <c>10s:1</c>, <c>1s:1/3</c>.</summary>
    public static Parsed<ReciprocityPoint, ReciprocityFault> Parse(string text)
    {
        if (text.Split(':') is not [var time, var correction])
        {
            return new(ReciprocityFault.NotTwoParts, $"'{text}' is not a time and the stops to open by: write 10s:1");
        }

        var seconds = Measure.Seconds(time);
        if (!seconds.Succeeded || seconds.Value.Sign == 0)
        {
            return new(ReciprocityFault.NoTime, seconds.Succeeded ? $"'{text}': an exposure lasts longer than nothing: write 10s:1" : seconds.Advice);
        }

        var stops = Film.Stops.Parse(correction);
        return !stops.TryGet(out var open) ? NoStops(stops.Advice)
            : open < 0 ? NoStops($"'{text}': film at long times needs more light, not less: write 10s:1")
            : new ReciprocityPoint(seconds.Value.ToDouble(), open);
    }

    static Parsed<ReciprocityPoint, ReciprocityFault> NoStops(string advice) => new(ReciprocityFault.NoStops, advice);
}

/// <summary>The ways in which a written line of a stock's table fails to be one.</summary>
public enum ReciprocityFault
{
    /// <summary>Not a time, a colon and stops.</summary>
    NotTwoParts,

    /// <summary>No time above nothing before the colon.</summary>
    NoTime,

    /// <summary>No stops of nothing or more after the colon.</summary>
    NoStops,
}

/// <summary>A stock's own table of reciprocity failure; between two of its times, a line in the logarithm of time.</summary>
public sealed record ReciprocityTable
{
    readonly ImmutableArray<ReciprocityPoint> _points;

    /// <summary>A table of at least one point.</summary>
    /// <exception cref="ArgumentException">No point, times that do not rise, a time of nothing, or a correction below nothing.</exception>
    public ReciprocityTable(params IEnumerable<ReciprocityPoint> points)
    {
        _points = [.. points];
        var rises = _points.Zip(_points.Skip(1)).All(pair => pair.First.Seconds < pair.Second.Seconds);
        if (_points.IsEmpty || !rises || _points.Any(point => point is { Seconds: <= 0 } or { Stops: < 0 }))
        {
            throw new ArgumentException("A reciprocity table has rising times above 0, and corrections of 0 or more.", nameof(points));
        }
    }

    /// <summary>The points, by rising time.</summary>
    public IReadOnlyList<ReciprocityPoint> Points => _points;

    /// <summary>
    /// The stops to open by at a time. Null outside the table: a maker who tables no time there has not
    /// measured it, and a guess would be ours.
    /// </summary>
    public double? CorrectionAt(double seconds)
    {
        if (seconds < _points[0].Seconds || seconds > _points[^1].Seconds)
        {
            return null;
        }

        var after = _points.First(point => point.Seconds >= seconds);
        var before = _points.Last(point => point.Seconds <= seconds);
        if (after == before)
        {
            return after.Stops;
        }

        var way = Math.Log(seconds / before.Seconds) / Math.Log(after.Seconds / before.Seconds);
        return before.Stops + (way * (after.Stops - before.Stops));
    }
}
