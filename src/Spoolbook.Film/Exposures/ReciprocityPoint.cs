namespace Spoolbook.Film.Exposures;

/// <summary>How much more exposure a stock needs at a long or short time, by the maker's table.</summary>
/// <param name="Seconds">The exposure time, above 0.</param>
/// <param name="Stops">The stops to open by at that time, 0 or more.</param>
public readonly record struct ReciprocityPoint(double Seconds, double Stops)
{
    /// <summary>Reads a line of a stock's table, written as one word: <c>10s:1</c>, <c>1s:1/3</c>.</summary>
    public static Parsed<ReciprocityPoint, ReciprocityFault> Parse(string text)
    {
        if (text.Split(':') is not [var time, var correction])
        {
            return new(ReciprocityFault.NotTwoParts, $"'{text}' is not a time and the stops to open by: write 10s:1");
        }

        var seconds = Measure.Seconds(time);
        if (!seconds.Succeeded || seconds.Value.Sign == 0)
        {
            return new(
                ReciprocityFault.NoTime,
                seconds.Succeeded ? $"'{text}': an exposure lasts longer than nothing: write 10s:1" : seconds.Advice
            );
        }

        var stops = Film.Stops.Parse(correction);
        return !stops.TryGet(out var open) ? NoStops(stops.Advice)
            : open < 0 ? NoStops($"'{text}': film at long times needs more light, not less: write 10s:1")
            : new ReciprocityPoint(seconds.Value.ToDouble(), open);
    }

    static Parsed<ReciprocityPoint, ReciprocityFault> NoStops(string advice) => new(ReciprocityFault.NoStops, advice);
}
