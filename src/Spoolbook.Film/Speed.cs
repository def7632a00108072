namespace Spoolbook.Film;

/// <summary>A camera or projection speed in frames a second, exact. <c>default</c> is 24, the normal speed.</summary>
public readonly record struct Speed
{
    // Stored less the normal speed, so that zero bits mean 24.
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

    /// <summary>The speed as the trade writes it: <c>24</c>, <c>23.976</c>.</summary>
    public override string ToString() => FramesPerSecond.IsWhole ? FramesPerSecond.ToString() : FramesPerSecond.ToText(3);
}
