using CsCheck;

namespace Spoolbook.Film.Tests;

public class FlickerTests
{
    // A cinematographers' forum gives 120/x whole numbers; an article on shutters lists the parts between.
    [Theory]
    [InlineData(60, "120 60 40 30 24 20 120/7 15 40/3 12")]
    [InlineData(50, "100 50 100/3 25 20 50/3 100/7 12.5")]
    public void At_these_speeds_any_shutter_is_safe(int mains, string speeds)
    {
        var safe = Flicker.SafeSpeeds(mains, new Speed(12));

        Assert.Equal(speeds.Split(' '), safe.Select(speed => speed.ToString()));
        Assert.All(safe, speed => Assert.True(Flicker.IsSafeSpeed(speed, mains)));
    }

    [Theory]
    [InlineData(25, 60, "75° 150° 225° 300°")] // an article on shutters and mains
    [InlineData(24, 60, "72° 144° 216° 288° 360°")] // 144°: a trade magazine on discharge lamps
    [InlineData(24, 50, "86.4° 172.8° 259.2° 345.6°")] // 172.8°: a trade magazine on flicker
    [InlineData(64, 50, "230.4°")]
    [InlineData(128, 60, "")]
    public void At_a_speed_these_shutters_are_safe(int speed, int mains, string shutters) =>
        Assert.Equal(shutters, string.Join(' ', Flicker.SafeShutters(new Speed(speed), mains)));

    [Theory]
    [InlineData(24, 50, false)]
    [InlineData(24, 60, true)]
    [InlineData(25, 50, true)]
    [InlineData(25, 60, false)]
    public void A_speed_belongs_to_a_mains(int speed, int mains, bool safe) => Assert.Equal(safe, Flicker.IsSafeSpeed(new Speed(speed), mains));

    [Fact]
    public void A_safe_shutter_lasts_whole_half_cycles() =>
        Gen.Select(Gen.Int[1, 960], Gen.OneOf(Gen.Const(50), Gen.Const(60))).Sample((tenths, mains) =>
        {
            var speed = new Speed(new Ratio(tenths, 10));
            return Flicker.SafeShutters(speed, mains).All(shutter => Flicker.HalfCycles(ExposureTime.Of(shutter, speed), mains).IsWhole);
        });

    [Fact]
    public void A_half_turn_at_24_is_not_whole_under_50_hertz() =>
        Assert.Equal(new Ratio(25, 12), Flicker.HalfCycles(ExposureTime.Of(Shutter.Half, Speed.Normal), 50));

    [Fact]
    public void Mains_have_a_frequency()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Flicker.SafeSpeeds(0, Speed.Normal));
        Assert.Throws<ArgumentOutOfRangeException>(() => Flicker.SafeShutters(Speed.Normal, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Flicker.IsSafeSpeed(Speed.Normal, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Flicker.HalfCycles(default, 0));
    }
}
