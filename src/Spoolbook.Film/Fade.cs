namespace Spoolbook.Film;

/// <summary>Which way a fade goes.</summary>
public enum FadeKind
{
    /// <summary>From black to the full opening.</summary>
    In,

    /// <summary>From the full opening to black.</summary>
    Out,
}

/// <summary>
/// A fade made with the variable shutter, turned evenly: linear in the opening of the shutter, and reckoned
/// at the middle of each frame, so that a fade-out and a fade-in over the same frames add up to one.
/// </summary>
public static class Fade
{
    /// <summary>
    /// The opening at a frame of a fade of n frames: (i + ½)/n in a fade-in, 1 − (i + ½)/n in a fade-out.
    /// </summary>
    /// <param name="kind">Which way.</param>
    /// <param name="frames">The length of the fade, 1 or more.</param>
    /// <param name="frame">The frame within the fade, 0 to n − 1.</param>
    /// <returns>The part of the opening, above 0 and below 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No such frame in the fade.</exception>
    public static double Opening(FadeKind kind, long frames, long frame)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(frames, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(frame);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(frame, frames);
        var fromBlack = kind == FadeKind.In ? frame : frames - 1 - frame;
        return (fromBlack + 0.5) / frames;
    }

    /// <summary>The opening as stops from normal: log2 of it, always below 0.</summary>
    /// <inheritdoc cref="Opening" path="/param"/>
    /// <inheritdoc cref="Opening" path="/exception"/>
    public static double StopsAt(FadeKind kind, long frames, long frame) => Stops.FromFraction(Opening(kind, frames, frame));
}
