using System.Collections.Immutable;

namespace Spoolbook.Film.Exposures;

/// <summary>A stock's own table of reciprocity failure, a straight line over the logarithm of time between two of its times.</summary>
public sealed record ReciprocityTable : IReciprocity
{
    // Far below what a meter or a watch shows: the rounding of logarithms.
    const double Hair = 1e-9;

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

    /// <inheritdoc/>
    public string Name => "the stock's table";

    /// <summary>
    /// The least that a stock needs at a time, in stops: by the table; past its end as much as its last line; before its
    /// start nothing. Film held open longer than the maker measured fails no less.
    /// </summary>
    /// <param name="seconds">Seconds that the shutter is open, above 0.</param>
    public double LeastAt(double seconds) => CorrectionAt(seconds) ?? (EndsBefore(seconds) ? _points[^1].Stops : 0);

    /// <summary>Whether the table ends before a time, so that <see cref="LeastAt"/> is only the least.</summary>
    public bool EndsBefore(double seconds) => seconds > _points[^1].Seconds;

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

    /// <inheritdoc/>
    public double? HeldFor(double metered)
    {
        // Between two points the correction is straight over the logarithm of time, and so is the logarithm of the time to hold.
        var sought = Math.Log2(metered);
        var marks = _points.Select(point => (Held: Math.Log2(point.Seconds), Metered: Math.Log2(point.Seconds) - point.Stops)).ToArray();
        foreach (var (from, to) in marks.Zip(marks.Skip(1).Append(marks[^1])))
        {
            if (Math.Abs(from.Metered - sought) < Hair)
            {
                return Math.Pow(2, from.Held);
            }

            if (from.Metered < sought && sought < to.Metered)
            {
                return Math.Pow(2, from.Held + ((sought - from.Metered) / (to.Metered - from.Metered) * (to.Held - from.Held)));
            }
        }

        return null;
    }
}
