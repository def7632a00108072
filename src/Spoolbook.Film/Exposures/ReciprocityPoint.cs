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
            return Failed(ReciprocityFault.NotTwoParts, text);
        }

        var read = Measure.Seconds(time);
        if (!read.TryGet(out var seconds))
        {
            return new(ReciprocityFault.NoTime, read.Slip!);
        }

        if (seconds.Sign == 0)
        {
            return Failed(ReciprocityFault.TimeOfNothing, text);
        }

        if (Measure.Seconds(correction).TryGet(out var corrected))
        {
            return corrected >= seconds
                ? new ReciprocityPoint(corrected.ToDouble(), Math.Log2((corrected / seconds).ToDouble()))
                : Failed(ReciprocityFault.ShorterTime, text);
        }

        var stops = Film.Stops.Parse(correction);
        return !stops.TryGet(out var open) ? new(ReciprocityFault.NoStops, stops.Slip!)
            : open < 0 ? Failed(ReciprocityFault.LessLight, text)
            : new ReciprocityPoint(seconds.ToDouble(), open);
    }

    static Parsed<ReciprocityPoint, ReciprocityFault> Failed(ReciprocityFault fault, string text) => new(fault, text);
}
