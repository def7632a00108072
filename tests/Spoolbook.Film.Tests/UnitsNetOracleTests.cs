using CsCheck;
using Spoolbook.Film.Exposures;
using UnitsNet;

namespace Spoolbook.Film.Tests;

/// <summary>Conversions against a general units library (J6 H).</summary>
public class UnitsNetOracleTests
{
    [Fact]
    public void Feet_and_metres_agree_with_a_units_library() =>
        Gen.Int[0, 1_000_000]
            .Sample(frames =>
            {
                var feet = new Footage(frames).Feet(Gauge.Film16).ToDouble();
                return Near(UnitsNet.Length.FromFeet(feet).Meters, new Footage(frames).Metres(Gauge.Film16).ToDouble());
            });

    [Fact]
    public void Pitches_agree_with_a_units_library() =>
        Gen.Int[0, Gauge.All.Count - 1]
            .Sample(i =>
            {
                var step = Gauge.All[i].Pitch.FrameStep(PitchKind.LongPitch).ToDouble();
                return Near(1 / UnitsNet.Length.FromMillimeters(step).Feet, Gauge.All[i].TrueFramesPerFoot(PitchKind.LongPitch).ToDouble());
            });

    [Fact]
    public void Footcandles_agree_with_lumens_on_a_square_foot() =>
        Assert.Equal(MeterLaw.LuxInFootcandle, 1 / Area.FromSquareFeet(1).SquareMeters, 9);

    [Fact]
    public void Feet_a_minute_agree_with_a_units_library() =>
        Gen.Int[1, 128]
            .Sample(fps =>
            {
                var feet = RunningTime.FeetPerMinute(new Speed(fps), Gauge.Film16).ToDouble();
                return Near(
                    UnitsNet.Speed.FromFeetPerMinute(feet).MetersPerMinutes,
                    RunningTime.MetresPerMinute(new Speed(fps), Gauge.Film16).ToDouble()
                );
            });

    static bool Near(double a, double b) => Math.Abs(a - b) <= 1e-9 * Math.Max(1, Math.Abs(b));
}
