using Spoolbook.Film.Exposures;
using Spoolbook.Film.Spools;

namespace Spoolbook.Film.Tests;

/// <summary>
/// What published tables are computed with, and no paper or check asks for: it holds the formulas of the house against them.
/// </summary>
static class PublishedFormulas
{
    extension(CameraAperture aperture)
    {
        /// <summary>Width over height: 1.37 in 16 mm, 1.69 in Super 16.</summary>
        public double Aspect => (double)(aperture.Width / aperture.Height);
    }

    extension(Distance)
    {
        /// <summary>A distance in metres.</summary>
        public static Distance FromMetres(Ratio metres) => new(metres * 1000, false);

        /// <summary>A distance in feet of exactly 304.8 mm.</summary>
        public static Distance FromFeet(Ratio feet) => new(feet * Length.MillimetresPerFoot, false);
    }

    extension(FilmRating)
    {
        /// <summary>The index that a push of n stops serves: EI × 2^n, so that 500 pushed one is 1000 (convention).</summary>
        public static double Pushed(double index, double stops) => index * Stops.ToFraction(stops);

        /// <summary>Stops from one index to another: 100 to 400 is 2, 125 to 64 is -0.97, which is called 1.</summary>
        public static double StopsBetween(double from, double to) => Math.Log2(to / from);

        /// <summary>The arithmetic index of a DIN number: 10^((S − 1) / 10), so that 28° is 501 (GNU units, after ISO 6:1993).</summary>
        public static double OfDin(double degrees) => Math.Pow(10, (degrees - 1) / 10);

        /// <summary>The DIN number of an arithmetic index: 1 + 10 log10 S; 250 is 24.98°.</summary>
        public static double ToDin(double index) => 1 + (10 * Math.Log10(index));
    }

    extension(FilmRoll roll)
    {
        /// <summary>The diameter in millimetres that a length makes: √(d² + 4 t L / π).</summary>
        /// <param name="length">Millimetres of film, 0 or more.</param>
        /// <exception cref="ArgumentOutOfRangeException">A negative length.</exception>
        public double DiameterOf(double length)
        {
            ArgumentOutOfRangeException.ThrowIfNegative(length);
            return Math.Sqrt((roll.Core * roll.Core) + (4 * roll.Thickness * length / Math.PI));
        }
    }

    extension(Flicker)
    {
        /// <summary>Whether twice the mains is a whole number of times the speed, so that any shutter is safe.</summary>
        /// <exception cref="ArgumentOutOfRangeException">The mains is not above zero.</exception>
        public static bool IsSafeSpeed(Speed speed, int mains)
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(mains, 1);
            return (new Ratio(2 * mains, 1) / speed.FramesPerSecond).IsWhole;
        }
    }

    extension(Gauge gauge)
    {
        /// <summary>The true count of frames in a foot, from the pitch of the stock.</summary>
        /// <param name="stock">Long pitch (print, and most 16 mm spring cameras) or short (camera negative).</param>
        public Ratio TrueFramesPerFoot(PitchKind stock) => Length.MillimetresPerFoot / gauge.Pitch.FrameStep(stock);
    }

    extension(LightFilter)
    {
        /// <summary>A filter known by its factor: light × factor is needed, log2 of it in stops.</summary>
        /// <exception cref="ArgumentOutOfRangeException">A factor of zero or less.</exception>
        public static LightFilter OfFactor(string name, double factor) => new(name, Stops.FromFactor(factor), 0);
    }

    extension(LightFilter filter)
    {
        /// <summary>The colour temperature that light has after the filter, in kelvin.</summary>
        /// <exception cref="ArgumentOutOfRangeException">A temperature that is not above zero, or light that would be bluer than
        /// any.</exception>
        public double KelvinAfter(double kelvin)
        {
            var mireds = LightFilter.MiredsOf(kelvin) + filter.Mireds;
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(mireds);
            return 1e6 / mireds;
        }
    }

    extension(MeterLaw)
    {
        /// <summary>The exposure value of a stop and a time: Av + Tv; 16 at 1/100 s is 14.64.</summary>
        public static double Ev(Stop stop, ExposureTime time) => stop.Av + MeterLaw.Tv(time);

        /// <summary>The light in lux that an exposure value needs at an index: 2^EV C / S.</summary>
        /// <exception cref="ArgumentOutOfRangeException">The index or the constant is not above zero.</exception>
        public static double LuxFor(double ev, double index, double c) => LightFor(ev, index, c);

        /// <summary>The luminance in candelas a square metre that an exposure value needs at an index: 2^EV K / S.</summary>
        /// <exception cref="ArgumentOutOfRangeException">The index or the constant is not above zero.</exception>
        public static double CandelasFor(double ev, double index, double k) => LightFor(ev, index, k);
    }

    extension(Passes)
    {
        /// <summary>
        /// The exposure in the overlap of an in-camera dissolve of n frames whose fade-in comes k frames late:
        /// log2(1 − k/n). Aligned (0) is level; late dips, and is black once the halves no longer meet; early
        /// (k below 0) bumps by log2(1 + |k|/n), one stop at most.
        /// </summary>
        /// <param name="frames">The length of both fades, 1 or more.</param>
        /// <param name="late">Frames that the fade-in begins after the fade-out began; negative is early.</param>
        /// <exception cref="ArgumentOutOfRangeException">A fade shorter than one frame.</exception>
        public static double DissolveLevel(long frames, long late)
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(frames, 1);
            var offset = Math.Clamp(late, -frames, frames);
            return Stops.FromFraction((double)(frames - offset) / frames);
        }

        /// <summary>The stops from normal for each of n equal passes: -log2 n (2 is -1, 3 is -1.585, 4 is -2).</summary>
        /// <exception cref="ArgumentOutOfRangeException">Fewer than one pass.</exception>
        public static double StopsForEqualPasses(int passes)
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(passes, 1);
            return -Math.Log2(passes);
        }
    }

    extension(RunningTime)
    {
        /// <summary>Metres a minute by the true step of a stock: 35 mm at 24 is 27.36, where the trade's count makes 27.43.</summary>
        public static Ratio TrueMetresPerMinute(Speed speed, Gauge gauge, PitchKind stock) =>
            speed.FramesPerSecond * 60 * gauge.Pitch.FrameStep(stock) / 1000;

        /// <summary>Seconds that something which took so long before the camera lasts on the screen.</summary>
        public static Ratio ScreenSeconds(Ratio cameraSeconds, Speed camera, Speed projection) =>
            cameraSeconds / RunningTime.ApparentSpeed(camera, projection);
    }

    extension(ShutterOpening mark)
    {
        /// <summary>log2 of the open fraction: what the opening itself costs, whatever the trade counts.</summary>
        public double ExactStops => Stops.FromFraction(mark.OpenFraction.ToDouble());
    }

    extension(SpringMotor spring)
    {
        /// <summary>The film that the spring still drives after what was run since it was last wound full; none below zero.</summary>
        public Footage LeftAfter(IEnumerable<Footage> runSinceWound)
        {
            var left = runSinceWound.Aggregate(spring.FullWind, (rest, run) => rest - run);
            return Footage.Max(left, Footage.Zero);
        }
    }

    extension(Stop stop)
    {
        /// <summary>
        /// The T-stop of a lens: N / √transmittance, so that 80 % is 0.32 stop slower (from memory; the definition
        /// in words is common in textbooks).
        /// </summary>
        /// <param name="transmittance">The part of the light that the glass passes, above 0 and up to 1.</param>
        /// <exception cref="ArgumentOutOfRangeException">A transmittance outside that range.</exception>
        public Stop Transmitting(double transmittance)
        {
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(transmittance);
            ArgumentOutOfRangeException.ThrowIfGreaterThan(transmittance, 1);
            return new Stop(stop.Av - Stops.FromFraction(transmittance), StopMark.T);
        }
    }

    extension(Stops)
    {
        /// <summary>2 to the power of the stops: -1 stop lets half the light through.</summary>
        public static double ToFraction(double stops) => Math.Pow(2, stops);

        /// <summary>Stops to the nearest third, as filters and meters are marked; a half third away from zero.</summary>
        public static double ToThird(double stops) => Math.Round(stops * 3, MidpointRounding.AwayFromZero) / 3;
    }

    static double LightFor(double ev, double index, double constant)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(index);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(constant);
        return Math.Pow(2, ev) * constant / index;
    }
}
