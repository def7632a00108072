using CsCheck;

namespace Spoolbook.Film.Tests;

public class StopTests
{
    // Nominal series: textbook page; the powers of √2 are computed (facts D27).
    [Theory]
    [InlineData(1, 0, 1)]
    [InlineData(1.4, 1, 1.4142)]
    [InlineData(2, 2, 2)]
    [InlineData(2.8, 3, 2.8284)]
    [InlineData(4, 4, 4)]
    [InlineData(5.6, 5, 5.6569)]
    [InlineData(8, 6, 8)]
    [InlineData(11, 7, 11.3137)]
    [InlineData(16, 8, 16)]
    [InlineData(22, 9, 22.6274)]
    [InlineData(32, 10, 32)]
    public void A_full_stop_is_a_power_of_root_two(double engraved, double av, double exact)
    {
        var stop = Stop.OfNumber(engraved);

        Assert.Equal(av, stop.Av);
        Assert.Equal(exact, stop.Number, 4);
        Assert.Equal(engraved, stop.EngravedNumber);
    }

    [Theory]
    [InlineData("5.6", 5, StopMark.None)]
    [InlineData("f/4", 4, StopMark.F)]
    [InlineData("f4", 4, StopMark.F)]
    [InlineData("F/4", 4, StopMark.F)]
    [InlineData("T2", 2, StopMark.T)]
    [InlineData("t 2", 2, StopMark.T)]
    [InlineData("4/5.6", 4.5, StopMark.None)]
    [InlineData("4/5.6 split", 4.5, StopMark.None)]
    [InlineData("T2/2.8", 2.5, StopMark.T)]
    [InlineData("5.6 1/3", 5.3333, StopMark.None)]
    [InlineData("5.6+2/3", 5.6667, StopMark.None)]
    [InlineData("5.6 + 0.3", 5.3, StopMark.None)]
    [InlineData("f/0.7", -1, StopMark.F)]
    [InlineData("6.3", 5.3107, StopMark.None)]
    [InlineData("0.5", -2, StopMark.None)]
    [InlineData("256", 16, StopMark.None)]
    public void Every_written_form_is_an_aperture_value(string text, double av, StopMark mark)
    {
        var stop = Stop.Parse(text).Value;

        Assert.Equal(av, stop.Av, 4);
        Assert.Equal(mark, stop.Mark);
    }

    [Theory]
    [InlineData("", StopFault.Empty)]
    [InlineData("0", StopFault.NotAboveZero)]
    [InlineData("-4", StopFault.NotAboveZero)]
    [InlineData("5,6", StopFault.DecimalComma)]
    [InlineData("4/8", StopFault.NotNeighbours)]
    [InlineData("5.6/4", StopFault.NotNeighbours)]
    [InlineData("4/4", StopFault.NotNeighbours)]
    [InlineData("4/0", StopFault.NotNeighbours)]
    [InlineData("5.6 4/3", StopFault.NotAPart)]
    [InlineData("5.6 3/3", StopFault.NotAPart)]
    [InlineData("5.6 0/3", StopFault.NotAPart)]
    [InlineData("5.6 1/0", StopFault.NotAPart)]
    [InlineData("0.3", StopFault.BeyondAnyLens)]
    [InlineData("1000", StopFault.BeyondAnyLens)]
    [InlineData("wide open", StopFault.NotAStop)]
    [InlineData("5.6 8", StopFault.NotAStop)]
    public void A_slip_of_the_pen_has_a_name_and_advice(string text, StopFault fault)
    {
        var parsed = Stop.Parse(text);

        Assert.Equal(fault, parsed.Fault);
        Assert.Equal(new Slip(fault, text), parsed.Slip);
    }

    [Theory]
    [InlineData(5, StopStep.Third, "5.6")]
    [InlineData(5.3, StopStep.Third, "5.6 1/3")]
    [InlineData(5.7, StopStep.Third, "5.6 2/3")]
    [InlineData(5.9, StopStep.Third, "8")]
    [InlineData(4.5, StopStep.Half, "4/5.6")]
    [InlineData(4.2, StopStep.Half, "4")]
    [InlineData(-4, StopStep.Third, "0.25")]
    [InlineData(17, StopStep.Third, "362")]
    [InlineData(-2, StopStep.Third, "0.5")]
    [InlineData(5.32, StopStep.Tenth, "5.6+0.3")]
    [InlineData(-0.5, StopStep.Half, "0.7/1")]
    [InlineData(-0.3, StopStep.Third, "0.7 2/3")]
    public void A_stop_is_written_as_the_trade_writes_it(double av, StopStep step, string text) =>
        Assert.Equal(text, new Stop(av).ToText(step));

    [Theory]
    [InlineData(5, StopMark.F, "f/5.6")]
    [InlineData(2, StopMark.T, "T2")]
    [InlineData(4.5, StopMark.T, "T4/5.6")]
    public void The_mark_is_before_the_number(double av, StopMark mark, string text) => Assert.Equal(text, new Stop(av, mark).ToString());

    [Fact]
    public void The_exact_text_of_a_stop_reads_back() =>
        Gen.Select(Gen.Int[-60, 480], Gen.OneOf(Gen.Const(2), Gen.Const(3), Gen.Const(10)), Gen.Enum<StopMark>())
            .Sample(
                (thirtieths, steps, mark) =>
                {
                    var stop = new Stop(Math.Floor(thirtieths * steps / 30.0) / steps, mark);
                    var back = Stop.Parse(stop.ToString()).Value;
                    return Math.Abs(back.Av - stop.Av) < 1e-9 && back.Mark == mark;
                }
            );

    [Fact]
    public void An_engraved_number_off_the_series_is_kept() =>
        Gen.Int[5, 999].Select(n => n / 10.0).Sample(n => Stop.Parse(Stop.OfNumber(n).ToString()).Value == Stop.OfNumber(n));

    // 80 % of the light is 1.118 N, 0.32 stop slower (facts D28; the formula is from memory).
    [Fact]
    public void A_lens_that_passes_four_fifths_is_a_third_of_a_stop_slower()
    {
        var stop = Stop.OfNumber(4, StopMark.F).Transmitting(0.8);

        Assert.Equal(4 * 1.118, stop.Number, 3);
        Assert.Equal(0.32, stop.Av - 4, 2);
        Assert.Equal(StopMark.T, stop.Mark);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1.1)]
    public void Glass_passes_some_light_and_makes_none(double transmittance) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Stop.OfNumber(4).Transmitting(transmittance));

    [Fact]
    public void Opening_by_a_stop_is_the_next_wider_number() => Assert.Equal("4", Stop.OfNumber(5.6).OpenedBy(1).ToString());

    [Fact]
    public void There_is_no_stop_of_nothing() => Assert.Throws<ArgumentOutOfRangeException>(() => Stop.OfNumber(0));

    [Theory]
    [InlineData(5.25, 6.1688)]
    [InlineData(17, 362.0387)]
    [InlineData(-3, 0.3536)]
    public void Between_and_beyond_engraved_stops_the_number_is_exact(double av, double number) =>
        Assert.Equal(number, new Stop(av).EngravedNumber, 4);
}
