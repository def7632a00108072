using CsCheck;

namespace Spoolbook.Film.Tests;

public class SpeedTests
{
    [Theory]
    [InlineData("24", 24, 1)]
    [InlineData(" 24 fps", 24, 1)]
    [InlineData("12.5", 25, 2)]
    [InlineData("24000/1001", 24000, 1001)]
    [InlineData("23.976", 24000, 1001)]
    [InlineData("23.98", 24000, 1001)]
    [InlineData("29.97", 30000, 1001)]
    [InlineData("47.952", 48000, 1001)]
    [InlineData("47.95", 48000, 1001)]
    [InlineData("59.94", 60000, 1001)]
    [InlineData("119.88", 120000, 1001)]
    [InlineData("23.97", 2397, 100)]
    [InlineData("100000", 100000, 1)]
    [InlineData("24.000000000000", 24, 1)]
    [InlineData("24/1.0000000000000", 24, 1)]
    public void A_written_speed_is_an_exact_ratio(string text, int above, int below) =>
        Assert.Equal(new Ratio(above, below), Speed.Parse(text).Value.FramesPerSecond);

    [Theory]
    [InlineData("", SpeedFault.Empty)]
    [InlineData("0", SpeedFault.NotAboveZero)]
    [InlineData("-24", SpeedFault.NotAboveZero)]
    [InlineData("12,5", SpeedFault.DecimalComma)]
    [InlineData("24/0", SpeedFault.OverZero)]
    [InlineData("100001", SpeedFault.TooFast)]
    [InlineData("1234567890123456", SpeedFault.TooFast)]
    [InlineData("1/1234567890123456", SpeedFault.TooFast)]
    [InlineData("slow", SpeedFault.NotASpeed)]
    [InlineData("16 2/3", SpeedFault.NotASpeed)]
    [InlineData("24.", SpeedFault.NotASpeed)]
    public void A_slip_of_the_pen_has_a_name_and_advice(string text, SpeedFault fault)
    {
        var parsed = Speed.Parse(text);

        Assert.Equal(fault, parsed.Fault);
        Assert.Equal(new Slip(fault, text), parsed.Slip);
    }

    [Theory]
    [InlineData(24, 1, "24")]
    [InlineData(25, 2, "12.5")]
    [InlineData(24000, 1001, "23.976")]
    [InlineData(2997, 125, "2997/125")]
    [InlineData(50, 3, "50/3")]
    public void A_speed_is_written_as_the_trade_writes_it(int above, int below, string text) =>
        Assert.Equal(text, new Speed(new Ratio(above, below)).ToString());

    [Fact]
    public void Every_speed_reads_back_as_it_was() =>
        Gen.Select(Gen.Int[1, 100_000], Gen.Int[1, 2000])
            .Sample(
                (above, below) =>
                {
                    var speed = new Speed(new Ratio(above, below));
                    return Speed.Parse(speed.ToString()).Value == speed;
                }
            );

    [Fact]
    public void Speeds_are_ordered_as_their_frames_a_second_are() =>
        Gen.Select(Gen.Int[1, 5], Gen.Int[1, 5])
            .Sample(
                (a, b) =>
                {
                    var (x, y) = (new Speed(a), new Speed(b));
                    return (x < y) == (a < b) && (x > y) == (a > b) && (x <= y) == (a <= b) && (x >= y) == (a >= b);
                }
            );

    [Fact]
    public void The_default_speed_is_24()
    {
        Assert.Equal(24, default(Speed).FramesPerSecond);
        Assert.Equal(Speed.Normal, default);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-24)]
    public void Film_does_not_stand_still_or_run_backwards(int speed) => Assert.Throws<ArgumentOutOfRangeException>(() => new Speed(speed));
}
