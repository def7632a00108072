using Spoolbook.Film.Exposures;

namespace Spoolbook.Film.Tests;

public class MeasureTests
{
    [Theory]
    [InlineData("12s", 12)]
    [InlineData("1.5 min", 90)]
    [InlineData("3h", 10_800)]
    [InlineData(" 1/4s ", 0.25)]
    [InlineData("123456789012345s", 123_456_789_012_345)]
    public void A_time_is_seconds(string text, double seconds) => Assert.Equal(seconds, Measure.Seconds(text).Value.ToDouble());

    [Theory]
    [InlineData("860lx", 860)]
    [InlineData("860 lux", 860)]
    [InlineData("80fc", 80 * MeterLaw.LuxInFootcandle)]
    public void Light_on_the_subject_is_lux(string text, double lux) => Assert.Equal(lux, Measure.Lux(text).Value.ToDouble(), 9);

    [Theory]
    [InlineData("3200cd/m2", 3200)]
    [InlineData("0.5 cd/m²", 0.5)]
    public void Light_from_the_subject_is_candelas(string text, double candelas) => Assert.Equal(candelas, Measure.Candelas(text).Value.ToDouble());

    [Theory]
    [InlineData("20%")]
    [InlineData("0.2")]
    [InlineData("1/5")]
    public void A_fifth_is_written_in_three_ways(string text) => Assert.Equal(new Ratio(1, 5), Measure.Part(text).Value);

    [Theory]
    [InlineData("100%")]
    [InlineData("1")]
    public void The_whole_is_a_part(string text) => Assert.Equal(1, Measure.Part(text).Value);

    [Theory]
    [InlineData("", MeasureFault.Empty, "there is nothing where a time should stand: write 12s, 90min or 3h")]
    [InlineData("12", MeasureFault.NoUnit, "'12' does not say of what: write 12s, 90min or 3h")]
    [InlineData("12kg", MeasureFault.UnknownUnit, "'12kg' has a unit that does not measure a time: write 12s, 90min or 3h")]
    [InlineData("1,5h", MeasureFault.DecimalComma, "'1,5h' has a comma: write the decimals after a point")]
    [InlineData("-3h", MeasureFault.Negative, "'-3h' is below nothing: write 12s, 90min or 3h")]
    [InlineData("1/0s", MeasureFault.OverZero, "'1/0s' divides by nothing: write 12s, 90min or 3h")]
    [InlineData("1234567890123456s", MeasureFault.TooMuch, "'1234567890123456s' is more than there can be: write 12s, 90min or 3h")]
    [InlineData("1/1234567890123456s", MeasureFault.TooMuch, "'1/1234567890123456s' is more than there can be: write 12s, 90min or 3h")]
    [InlineData("long", MeasureFault.NotANumber, "'long' is not a time: write 12s, 90min or 3h")]
    public void A_slip_of_the_pen_has_a_name_and_advice(string text, MeasureFault fault, string advice)
    {
        var parsed = Measure.Seconds(text);

        Assert.Equal(fault, parsed.Fault);
        Assert.Equal(advice, parsed.Advice);
    }

    [Fact]
    public void Every_figure_says_what_it_is()
    {
        Assert.Equal("'80' does not say of what: write 80fc (footcandles) or 860lx", Measure.Lux("80").Advice);
        Assert.Equal("'dim' is not light on the subject: write 80fc (footcandles) or 860lx", Measure.Lux("dim").Advice);
        Assert.Equal("'dim' is not light from the subject: write 3200cd/m2", Measure.Candelas("dim").Advice);
        Assert.Equal("'120%' is more than there can be: write 20%, 0.2 or 1/5", Measure.Part("120%").Advice);
        Assert.Equal("'half' is not a part of a whole: write 20%, 0.2 or 1/5", Measure.Part("half").Advice);
    }
}
