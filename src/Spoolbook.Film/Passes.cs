namespace Spoolbook.Film;

/// <summary>Several exposures on one frame, added up.</summary>
public static class Passes
{
    /// <summary>
    /// The exposure of several passes together, in stops from normal: log2 of the sum of 2^stops. Light adds, stops do
    /// not: two passes one stop under make a normal frame.
    /// </summary>
    /// <param name="stops">Each pass in stops from normal; negative infinity where no light reached the frame.</param>
    /// <returns>Stops from normal; negative infinity, black, where there is no pass or no light in any.</returns>
    public static double Composite(IEnumerable<double> stops)
    {
        var light = stops.Sum(s => Math.Pow(2, s));
        return Math.Log2(light);
    }

    /// <summary>The stops from normal for each of n equal passes: -log2 n (2 is -1, 3 is -1.585, 4 is -2).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than one pass.</exception>
    public static double StopsForEqualPasses(int passes)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(passes, 1);
        return -Math.Log2(passes);
    }

    /// <summary>
    /// The exposure in the overlap of an in-camera dissolve of n frames whose fade-in comes k frames late:
    /// log2(1 − k/n). Aligned (0) is level; late dips, and is black once the halves no longer meet; early
    /// (k below 0) bumps by log2(1 + |k|/n), one stop at most.
    /// </summary>
    /// <param name="frames">The length of both fades, 1 or more.</param>
    /// <param name="late">Frames that the fade-in begins after the fade-out began; negative is early.</param>
    /// <exception cref="ArgumentOutOfRangeException">A fade shorter than one frame.</exception>
    public static double DissolveLevel(long frames, long late)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(frames, 1);
        var offset = Math.Clamp(late, -frames, frames);
        return Stops.FromFraction((double)(frames - offset) / frames);
    }
}
