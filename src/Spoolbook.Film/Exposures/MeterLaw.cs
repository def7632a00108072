namespace Spoolbook.Film.Exposures;

/// <summary>
/// The equation of light, film, time and stop: 2^EV = N²/t = E S / C = L S / K (GNU units; ISO 2720:1974 as quoted). C
/// and K are the meter maker's choice, so they are always passed in.
/// </summary>
public static class MeterLaw
{
    /// <summary>Lux in a footcandle: one lumen on a square foot, 1 / 0.3048² = 10.764.</summary>
    public const double LuxInFootcandle = 1 / (0.3048 * 0.3048);

    /// <summary>The time value: log2 of one over the seconds; 1/48 s is 5.585 (ASA PH2.12-1961, in GNU units).</summary>
    public static double Tv(ExposureTime time) => -Stops.FromFraction(time.Seconds.ToDouble());

    /// <summary>The exposure value that light falling on the subject asks for: log2 (E S / C).</summary>
    /// <param name="lux">Illuminance in lux, above 0.</param>
    /// <param name="index">The exposure index, above 0.</param>
    /// <param name="c">The incident constant in lux seconds; <see cref="MeterConstants"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of them is not above zero.</exception>
    public static double IncidentEv(double lux, double index, double c) => Log2OfAboveZero(lux, index, c);

    /// <summary>The exposure value for light coming from the subject: log2 (L S / K).</summary>
    /// <param name="candelas">Luminance in candelas a square metre, above 0.</param>
    /// <param name="index">The exposure index, above 0.</param>
    /// <param name="k">The reflected constant in candela seconds a square metre; <see cref="MeterConstants"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of them is not above zero.</exception>
    public static double ReflectedEv(double candelas, double index, double k) => Log2OfAboveZero(candelas, index, k);

    /// <summary>The stop for an exposure value at a time.</summary>
    public static Stop StopFor(double ev, ExposureTime time) => new(ev - Tv(time));

    static double Log2OfAboveZero(double light, double index, double constant)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(light);
        return Math.Log2(light / LightFor(0, index, constant));
    }

    static double LightFor(double ev, double index, double constant)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(index);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(constant);
        return Math.Pow(2, ev) * constant / index;
    }
}
