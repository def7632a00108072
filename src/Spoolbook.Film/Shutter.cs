namespace Spoolbook.Film;

/// <summary>
/// The opening of a rotary shutter in degrees, exact. <c>default</c> is 180°, the half turn.
/// </summary>
public readonly record struct Shutter
{
    // Stored less the half turn, so that zero bits are 180°.
    readonly Ratio _aboveHalf;

    /// <summary>An opening of so many degrees.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, or more than the full turn.</exception>
    public Shutter(Ratio degrees)
    {
        if (degrees.Sign <= 0 || degrees > 360)
        {
            throw new ArgumentOutOfRangeException(nameof(degrees), "A shutter opens more than 0 and at most 360 degrees.");
        }

        _aboveHalf = degrees - 180;
    }

    /// <summary>180°.</summary>
    public static Shutter Half => default;

    /// <summary>Degrees, above 0 and at most 360.</summary>
    public Ratio Degrees => _aboveHalf + 180;

    /// <summary>Stops gained over another opening (negative where this one is smaller), at one speed.</summary>
    public double StopsOver(Shutter other) => Stops.FromFraction((Degrees / other.Degrees).ToDouble());

    /// <summary>The opening as <c>172.8°</c>.</summary>
    public override string ToString() => Degrees.ToShortText(2) + "°";
}
