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
}
