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
    public void Light_from_the_subject_is_candelas(string text, double candelas) =>
        Assert.Equal(candelas, Measure.Candelas(text).Value.ToDouble());

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
    [InlineData("25mm", 25)]
    [InlineData("6.1 cm", 61)]
    [InlineData("2in", 50.8)]
    public void A_size_is_millimetres(string text, double millimetres) =>
        Assert.Equal(millimetres, Measure.Millimetres(text).Value.ToDouble());

    [Theory]
    [InlineData("133", 133)]
    [InlineData("172.8deg", 172.8)]
    [InlineData("172.8°", 172.8)]
    [InlineData("360", 360)]
    public void A_shutter_opens_by_degrees(string text, double degrees) => Assert.Equal(degrees, Measure.Degrees(text).Value.ToDouble());

    [Fact]
    public void An_index_and_a_density_have_no_unit()
    {
        Assert.Equal(new Ratio(25, 2), Measure.Number("12.5").Value);
        Assert.Equal(new Ratio(3, 5), Measure.Density("0.6").Value);
        Assert.Equal(0, Measure.Density("0").Value);
        Assert.Equal(10, Measure.Density("10").Value);
    }

    [Fact]
    public void Zero_is_a_slip_where_a_figure_must_be_above_it()
    {
        Parsed<Ratio, MeasureFault>[] nothing =
        [
            Measure.Millimetres("0mm"),
            Measure.Degrees("0"),
            Measure.Number("0"),
            Measure.Lux("0fc"),
            Measure.Candelas("0cd/m2"),
        ];

        Assert.All(nothing, read => Assert.Equal(MeasureFault.NotAboveZero, read.Fault));
    }

    [Theory]
    [InlineData("", MeasureFault.Empty)]
    [InlineData("12", MeasureFault.NoUnit)]
    [InlineData("12kg", MeasureFault.UnknownUnit)]
    [InlineData("1,5h", MeasureFault.DecimalComma)]
    [InlineData("-3h", MeasureFault.Negative)]
    [InlineData("1/0s", MeasureFault.OverZero)]
    [InlineData("1234567890123456s", MeasureFault.TooMuch)]
    [InlineData("1/1234567890123456s", MeasureFault.TooMuch)]
    [InlineData("long", MeasureFault.NotANumber)]
    public void A_slip_of_the_pen_has_a_name(string text, MeasureFault fault)
    {
        var parsed = Measure.Seconds(text);

        Assert.Equal(fault, parsed.Fault);
        Assert.Equal(new Slip(fault, text) { Measure = MeasureKind.Time }, parsed.Slip);
    }
}
