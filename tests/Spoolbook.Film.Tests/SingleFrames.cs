namespace Spoolbook.Film.Tests;

/// <summary>Animation: each drawing or pose held for one frame, two or three.</summary>
static class SingleFrames
{
    /// <summary>Film for so many drawings, on ones, twos or threes.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative drawings, or fewer than one frame each.</exception>
    public static Footage FilmFor(long drawings, int framesEach)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(drawings);
        ArgumentOutOfRangeException.ThrowIfLessThan(framesEach, 1);
        return new Footage(drawings * framesEach);
    }

    /// <summary>Drawings that fill a length of film; the last may be held for fewer frames.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than one frame each.</exception>
    public static long DrawingsFor(Footage film, int framesEach)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(framesEach, 1);
        return (long)new Ratio(film.Frames, framesEach).Ceiling();
    }

    /// <summary>Drawings for each second on the screen: 24 on twos is 12.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than one frame each.</exception>
    public static Ratio DrawingsPerSecond(Speed projection, int framesEach)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(framesEach, 1);
        return projection.FramesPerSecond / framesEach;
    }
}
