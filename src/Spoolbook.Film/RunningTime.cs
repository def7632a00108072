using System.Globalization;

namespace Spoolbook.Film;

/// <summary>How fast film runs, how long it lasts, and how the motion on it looks.</summary>
public static class RunningTime
{
    /// <summary>Feet a minute by the trade's count: 16 mm at 24 is 36 (frames a second × 60 / frames a foot).</summary>
    public static Ratio FeetPerMinute(Speed speed, Gauge gauge) => speed.FramesPerSecond * 60 / gauge.FramesPerFoot;

    /// <summary>Metres a minute by the trade's count of frames in a foot: 16 mm at 24 is 10.97.</summary>
    public static Ratio MetresPerMinute(Speed speed, Gauge gauge) => FeetPerMinute(speed, gauge) * Length.MetresPerFoot;

    /// <summary>
    /// Metres a minute by the pitch of the perforations: 35 mm on long pitch at 24 is 27.36 (24 × 60 × 0.019, a
    /// projection primer), where the count of frames in a foot gives 27.43.
    /// </summary>
    public static Ratio TrueMetresPerMinute(Speed speed, Gauge gauge, PitchKind stock) =>
        speed.FramesPerSecond * 60 * gauge.Pitch.FrameStep(stock) / 1000;

    /// <summary>
    /// How fast the subject looks on the screen: projection speed over camera speed. 2 is twice as fast, below
    /// 1 is slower; at 16 or 12 the subject looks faster, at 32, 48 or 64 slower (common practice).
    /// </summary>
    public static Ratio ApparentSpeed(Speed camera, Speed projection) => projection.FramesPerSecond / camera.FramesPerSecond;

    /// <summary>
    /// Seconds as <c>11:06.67</c>: minutes, and seconds to the decimals asked for, a half rounded up. Minutes run on
    /// past 59: no hours.
    /// </summary>
    /// <param name="seconds">Not negative.</param>
    /// <param name="places">Decimals of a second, 0 to 6.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative seconds.</exception>
    public static string Text(Ratio seconds, int places)
    {
        if (seconds.Sign < 0)
        {
            throw new ArgumentOutOfRangeException(nameof(seconds), "A running time is not negative.");
        }

        // Rounded first: 59.999 is 1:00, not 0:60.
        var rounded = DecimalText.Read(seconds.ToText(places));
        var minutes = (rounded / 60).Floor();
        var rest = (rounded - new Ratio(minutes * 60, 1)).ToText(places);
        var width = places == 0 ? 2 : 3 + places;
        return string.Create(CultureInfo.InvariantCulture, $"{minutes}:{rest.PadLeft(width, '0')}");
    }
}
