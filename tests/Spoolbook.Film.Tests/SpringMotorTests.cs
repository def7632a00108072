using CsCheck;

namespace Spoolbook.Film.Tests;

public class SpringMotorTests
{
    // P6, common practice: a full wind gives 20 to 30 seconds at 24.
    [Theory]
    [InlineData(20, "12+00")]
    [InlineData(30, "18+00")]
    public void A_full_wind_is_a_length_of_film(int seconds, string length) =>
        Assert.Equal(length, SpringMotor.Running(seconds, Speed.Normal).FullWind.FeetAndFrames(Gauge.Film16));

    [Theory]
    [InlineData(12, 40)]
    [InlineData(24, 20)]
    [InlineData(48, 10)]
    public void Twice_the_speed_is_half_the_time(int speed, int seconds) =>
        Assert.Equal(seconds, SpringMotor.Running(20, Speed.Normal).SecondsAt(new Speed(speed)));

    [Fact]
    public void What_a_wind_gives_is_the_same_film_at_any_speed() =>
        Gen.Select(Gen.Long[1, 2000], Gen.Int[1, 500])
            .Sample(
                (frames, tenths) =>
                {
                    var speed = new Speed(new Ratio(tenths, 10));
                    return Footage.RunningFor(new SpringMotor(new Footage(frames)).SecondsAt(speed), speed).Frames == frames;
                }
            );

    [Fact]
    public void What_was_run_since_winding_is_gone_and_no_more_than_all()
    {
        var spring = new SpringMotor(new Footage(720));

        Assert.Equal(new Footage(720), spring.LeftAfter([]));
        Assert.Equal(new Footage(120), spring.LeftAfter([new Footage(400), new Footage(200)]));
        Assert.Equal(Footage.Zero, spring.LeftAfter([new Footage(400), new Footage(400)]));
    }
}
