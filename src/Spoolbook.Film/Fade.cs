namespace Spoolbook.Film;

/// <summary>
/// A fade made with the variable shutter: the opening changes by the same amount every frame, so in stops the light
/// falls faster and faster towards black (common practice: turn the shutter evenly).
/// </summary>
public static class Fade
{
    /// <summary>
    /// The part of the full opening in one frame of a fade in from black: (i + ½) / n, the opening half way
    /// through the frame. 1 from the fade's end on; 0 before its start.
    /// </summary>
    /// <param name="frame">The frame, counted from 0 at the fade's first frame.</param>
    /// <param name="frames">Frames in the fade; 0 is no fade.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="frames"/> is below zero.</exception>
    public static double OpeningIn(long frame, long frames)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(frames);
        return frame < 0 ? 0
            : frame >= frames ? 1
            : (frame + 0.5) / frames;
    }

    /// <summary>
    /// The part of the full opening in one frame of a fade out to black: 1 − (i + ½) / n. 1 before its start;
    /// 0 from its end on.
    /// </summary>
    /// <param name="frame">The frame, counted from 0 at the fade's first frame.</param>
    /// <param name="frames">Frames in the fade; 0 is black at once.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="frames"/> is below zero.</exception>
    public static double OpeningOut(long frame, long frames) => 1 - OpeningIn(frame, frames);
}
