using System.Globalization;

namespace Spoolbook.Film;

/// <summary>How long a frame sees light, in seconds, exact. <c>default</c> is one second.</summary>
public readonly record struct ExposureTime : IComparable<ExposureTime>
{
    // Stored less one second, so that zero bits are a valid time.
    readonly Ratio _aboveOne;

    /// <summary>So many seconds.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above zero.</exception>
    public ExposureTime(Ratio seconds)
    {
        if (seconds.Sign <= 0)
        {
            throw new ArgumentOutOfRangeException(nameof(seconds), "An exposure lasts longer than nothing.");
        }

        _aboveOne = seconds - 1;
    }

    /// <summary>Seconds, above zero.</summary>
    public Ratio Seconds => _aboveOne + 1;

    /// <summary>The x of <c>1/x s</c>, exact: 64.96 for 133° at 24.</summary>
    public Ratio Denominator => 1 / Seconds;

    /// <summary>angle / (360 × speed) (B. Brown, Cinematography, 2nd ed., p. 208).</summary>
    public static ExposureTime Of(Shutter shutter, Speed speed) => new(shutter.Degrees / (360 * speed.FramesPerSecond));

    /// <summary>
    /// The time to set on the meter where a reflex finder takes part of the light: time × (1 − loss). The film sees
    /// less light for the whole time; a meter can only be set to a shorter time.
    /// </summary>
    /// <param name="finderLoss">The part of the light that goes to the finder, from 0 to below 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A loss outside that range.</exception>
    public ExposureTime Adapted(Ratio finderLoss)
    {
        if (finderLoss.Sign < 0 || finderLoss >= 1)
        {
            throw new ArgumentOutOfRangeException(nameof(finderLoss), "A finder takes from none to less than all of the light.");
        }

        return new ExposureTime(Seconds * (1 - finderLoss));
    }

    /// <summary>The time with the variable shutter set to a mark; null where the mark is black.</summary>
    public ExposureTime? At(ShutterOpening mark) => mark.IsBlack ? null : new ExposureTime(Seconds * mark.OpenFraction);

    /// <summary>Stops gained over another time (negative where this one is shorter).</summary>
    public double StopsOver(ExposureTime other) => Stops.FromFraction((Seconds / other.Seconds).ToDouble());

    /// <inheritdoc/>
    public int CompareTo(ExposureTime other) => Seconds.CompareTo(other.Seconds);

    /// <summary>Whether <paramref name="a"/> is shorter.</summary>
    public static bool operator <(ExposureTime a, ExposureTime b) => a.CompareTo(b) < 0;

    /// <summary>Whether <paramref name="a"/> is longer.</summary>
    public static bool operator >(ExposureTime a, ExposureTime b) => a.CompareTo(b) > 0;

    /// <summary>Whether <paramref name="a"/> is at most as long.</summary>
    public static bool operator <=(ExposureTime a, ExposureTime b) => a.CompareTo(b) <= 0;

    /// <summary>Whether <paramref name="a"/> is at least as long.</summary>
    public static bool operator >=(ExposureTime a, ExposureTime b) => a.CompareTo(b) >= 0;

    /// <summary>
    /// As a shutter dial reads: <c>1/65 s</c>, to the nearest whole number, up to about a third of a second; <c>0.5 s</c>
    /// or <c>12 s</c>, to a tenth, above it. 0.34 s is a third, 0.4 s is not.
    /// </summary>
    public override string ToString() => Denominator >= new Ratio(11, 4) ? $"1/{Denominator.Round()} s" : Seconds.ToShortText(1) + " s";

    /// <summary>A time in seconds, which need not be exact, in the same words.</summary>
    internal static string Write(double seconds) =>
        seconds is > 1e-9 and < 1e15
            ? new ExposureTime(Ratio.FromDecimal((decimal)seconds)).ToString()
            : string.Create(CultureInfo.InvariantCulture, $"{seconds:0.##E+0} s");
}
