namespace Spoolbook.Film.Exposures;

/// <summary>How much more exposure a stock needs at a long or short time, by the maker's table.</summary>
/// <param name="Seconds">The exposure time, above 0.</param>
/// <param name="Stops">The stops to open by at that time, 0 or more.</param>
public readonly record struct ReciprocityPoint(double Seconds, double Stops)
{
    /// <summary>
    /// Reads a line of a stock's table, written as one word: <c>10s:1</c>, <c>1s:1/3</c>. Instead of stops it can give the
    /// corrected time, <c>10s:50s</c>: at 50 s that is a loss of log2 (50 / 10) stops.
    /// </summary>
    public static Parsed<ReciprocityPoint, ReciprocityFault> Parse(string text)
    {
        if (text.Split(':') is not [var time, var correction])
        {
            return new(
                ReciprocityFault.NotTwoParts,
                $"'{text}' is not a time and the stops to open by: write 10s:1, or the corrected time, 10s:50s"
            );
        }

        var seconds = Measure.Seconds(time);
        if (!seconds.Succeeded || seconds.Value.Sign == 0)
        {
            return new(
                ReciprocityFault.NoTime,
                seconds.Succeeded ? $"'{text}': an exposure lasts longer than nothing: write 10s:1" : seconds.Advice
            );
        }

        if (Measure.Seconds(correction).TryGet(out var corrected))
        {
            return corrected >= seconds.Value
                ? new ReciprocityPoint(corrected.ToDouble(), Math.Log2((corrected / seconds.Value).ToDouble()))
                : NoStops($"'{text}': the corrected time is at least the metered one: write 10s:50s");
        }

        var stops = Film.Stops.Parse(correction);
        return !stops.TryGet(out var open) ? NoStops(stops.Advice)
            : open < 0 ? NoStops($"'{text}': film at long times needs more light, not less: write 10s:1")
            : new ReciprocityPoint(seconds.Value.ToDouble(), open);
    }

    static Parsed<ReciprocityPoint, ReciprocityFault> NoStops(string advice) => new(ReciprocityFault.NoStops, advice);
}
