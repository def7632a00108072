using System.Collections.Immutable;

namespace Spoolbook.Film.Exposures;

/// <summary>
/// A stock's own table of reciprocity failure. Between two of its times it is a straight line over the logarithm of
/// time.
/// </summary>
public sealed record ReciprocityTable
{
    readonly ImmutableArray<ReciprocityPoint> _points;

    /// <summary>A table of at least one point.</summary>
    /// <exception cref="ArgumentException">No point, times that do not rise, a time of zero, or a correction below zero.</exception>
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

    /// <summary>The stops to open by at a time. Null outside the table: the maker has not measured there, and we do not guess.</summary>
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
