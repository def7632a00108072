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
    [InlineData(24, 60, "72° 144° 216° 288° 360°")] // 144°: a trade magazine on discharge lamps; D2 H: 72° and 144° are 1/120 and 1/60 s
    [InlineData(24, 50, "86.4° 172.8° 259.2° 345.6°")] // 172.8°: a trade magazine on flicker; D2 H: it is 1/50 s
    [InlineData(64, 50, "230.4°")]
    [InlineData(128, 60, "")]
    public void At_a_speed_these_shutters_are_safe(int speed, int mains, string shutters) =>
        Assert.Equal(shutters, string.Join(' ', Flicker.SafeShutters(new Speed(speed), mains)));

    [Theory]
    [InlineData(24, 50, false)]
    [InlineData(24, 60, true)]
    [InlineData(25, 50, true)]
    [InlineData(25, 60, false)]
    public void A_speed_belongs_to_a_mains(int speed, int mains, bool safe) =>
        Assert.Equal(safe, Flicker.IsSafeSpeed(new Speed(speed), mains));

    // A cinematographers' forum (April 2006) lists what divides 120 pulses of 60 Hz evenly, whatever the shutter.
    [Theory]
    [InlineData(1), InlineData(2), InlineData(3), InlineData(4), InlineData(5), InlineData(6), InlineData(8), InlineData(10)]
    [InlineData(12), InlineData(15), InlineData(20), InlineData(24), InlineData(30), InlineData(40), InlineData(60)]
    public void Whole_speeds_that_divide_the_pulses_are_safe_under_60_hertz(int speed)
    {
        Assert.True(Flicker.IsSafeSpeed(new Speed(speed), 60));
        Assert.Contains(new Speed(speed), Flicker.SafeSpeeds(60, new Speed(speed)));
    }

    // An article on the lighting of sets carries the list on to the twentieth part: 120 = 7 × 17.143 = 9 × 13.333 = 20 × 6.
    [Fact]
    public void The_list_of_safe_speeds_goes_on_to_the_twentieth_part() =>
        Assert.Equal(Enumerable.Range(1, 20).Select(part => new Speed(new Ratio(120, part))), Flicker.SafeSpeeds(60, new Speed(6)));

    [Fact]
    public void A_safe_shutter_lasts_whole_half_cycles() =>
        Gen.Select(Gen.Int[1, 960], Gen.OneOf(Gen.Const(50), Gen.Const(60)))
            .Sample(
                (tenths, mains) =>
                {
                    var speed = new Speed(new Ratio(tenths, 10));
                    return Flicker
                        .SafeShutters(speed, mains)
                        .All(shutter => Flicker.HalfCycles(ExposureTime.Of(shutter, speed), mains).IsWhole);
                }
            );

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
