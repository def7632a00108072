using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Strips;

/// <summary>How a take was exposed, in stops from normal, apart from its fades.</summary>
public static class TakeExposure
{
    /// <summary>
    /// Stops from normal where no fade is under way: as written, if the sheet says what was meant; else what
    /// the part-closed shutter leaves. Negative infinity under a closed shutter, whatever is written.
    /// </summary>
    /// <param name="body">The body's name.</param>
    public static double BaseStops(Production production, Take take, string? body)
    {
        var mark = take.Shutter is { } set ? production.BodyNamed(body)?.MarkNamed(set.Value) : null;
        if (mark is { Open.Value.Sign: 0 })
        {
            return double.NegativeInfinity;
        }

        return take.Exposed?.Value ?? -(mark?.Stops?.Value ?? 0);
    }
}
