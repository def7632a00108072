namespace Spoolbook.Film;

/// <summary>
/// Speeds and shutters that are safe under discharge lamps on plain ballasts, whose light pulses twice per cycle of the
/// mains. Computed from that alone: no handbook's table was at hand. Articles give 144° at 24 under 60 Hz and 172.8° at
/// 24 under 50 Hz, which agree. Camera and mains must hold their speed; a spring does not.
/// </summary>
public static class Flicker
{
    /// <summary>
    /// Speeds at which every frame sees the same light at any shutter angle: twice the mains over 1, 2, 3, …, fastest
    /// first.
    /// </summary>
    /// <param name="mains">Hertz: 50 or 60.</param>
    /// <param name="slowest">The slowest speed to list, in frames a second.</param>
    /// <exception cref="ArgumentOutOfRangeException">The mains is not above zero.</exception>
    public static IReadOnlyList<Speed> SafeSpeeds(int mains, Speed slowest)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(mains, 1);
        var pulses = new Ratio(2 * mains, 1);
        var count = (int)(pulses / slowest.FramesPerSecond).Floor();
        return [.. Enumerable.Range(1, count).Select(n => new Speed(pulses / n))];
    }

    /// <summary>
    /// Shutters whose exposure time is a whole number of half cycles at a speed: 360 × speed × k / (2 × mains)
    /// degrees, smallest first, up to the full turn.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The mains is not above zero.</exception>
    public static IReadOnlyList<Shutter> SafeShutters(Speed speed, int mains)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(mains, 1);
        var pulse = 360 * speed.FramesPerSecond / (2 * mains);
        var count = (int)(360 / pulse).Floor();
        return [.. Enumerable.Range(1, count).Select(k => new Shutter(pulse * k))];
    }

    /// <summary>Half cycles of the mains in an exposure; a whole number is safe.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The mains is not above zero.</exception>
    public static Ratio HalfCycles(ExposureTime time, int mains)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(mains, 1);
        return time.Seconds * 2 * mains;
    }
}
