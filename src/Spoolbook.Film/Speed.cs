namespace Spoolbook.Film;

/// <summary>A camera or projection speed in frames a second, exact. <c>default</c> is 24, the normal speed.</summary>
public readonly record struct Speed : IComparable<Speed>
{
    // Stored less the normal speed, so that zero bits are 24.
    readonly Ratio _aboveNormal;

    /// <summary>A speed of so many frames a second.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The speed is not above zero.</exception>
    public Speed(Ratio framesPerSecond)
    {
        if (framesPerSecond.Sign <= 0)
        {
            throw new ArgumentOutOfRangeException(nameof(framesPerSecond), "A speed is above 0 frames a second.");
        }

        _aboveNormal = framesPerSecond - 24;
    }

    /// <summary>24 frames a second (common practice).</summary>
    public static Speed Normal => default;

    /// <summary>Frames a second, exact; above zero.</summary>
    public Ratio FramesPerSecond => _aboveNormal + 24;

    /// <summary>
    /// Reads <c>24</c>, <c>12.5</c>, <c>24000/1001</c> or <c>23.976</c>, with or without <c>fps</c> after it. 23.976,
    /// 23.98, 29.97, 47.952, 59.94 and 119.88 are read as the ratios over 1001 that they abbreviate.
    /// </summary>
    public static Parsed<Speed, SpeedFault> Parse(string text) => SpeedForm.Read(text);

    /// <inheritdoc/>
    public int CompareTo(Speed other) => FramesPerSecond.CompareTo(other.FramesPerSecond);

    /// <summary>Whether <paramref name="a"/> is slower.</summary>
    public static bool operator <(Speed a, Speed b) => a.CompareTo(b) < 0;

    /// <summary>Whether <paramref name="a"/> is faster.</summary>
    public static bool operator >(Speed a, Speed b) => a.CompareTo(b) > 0;

    /// <summary>Whether <paramref name="a"/> is at most as fast.</summary>
    public static bool operator <=(Speed a, Speed b) => a.CompareTo(b) <= 0;

    /// <summary>Whether <paramref name="a"/> is at least as fast.</summary>
    public static bool operator >=(Speed a, Speed b) => a.CompareTo(b) >= 0;

    /// <summary>
    /// The speed as the trade writes it: <c>24</c>, <c>12.5</c>, <c>23.976</c>; as a fraction where three decimals are
    /// not exact.
    /// </summary>
    public override string ToString() => SpeedForm.Write(this);
}
