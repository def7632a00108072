using CsCheck;

namespace Spoolbook.Film.Tests;

public class FilmLengthTests
{
    static readonly Gen<Gauge> _gauges = Gen.Int[0, Gauge.All.Count - 1].Select(i => Gauge.All[i]);

    [Theory]
    [InlineData("31+12", 1252)]
    [InlineData(" 31 + 12 ", 1252)]
    [InlineData("0+05", 5)]
    [InlineData("100+00", 4000)]
    [InlineData("31.3ft", 1252)]
    [InlineData("31 feet", 1240)]
    [InlineData("1 foot", 40)]
    [InlineData("12 frames", 12)]
    [InlineData("1 metre", 131)]
    [InlineData("1 meter", 131)]
    [InlineData("2 meters", 262)]
    [InlineData("1 second", 24)]
    [InlineData("2 sec", 48)]
    [InlineData("99999999fr", 99_999_999)]
    [InlineData("1.0000000000000ft", 40)]
    [InlineData("31ft 12fr", 1252)]
    [InlineData("1252fr", 1252)]
    [InlineData("1 frame", 1)]
    [InlineData("9.5m", 1247)]
    [InlineData("3.048 metres", 400)]
    [InlineData("12s", 288)]
    [InlineData("12.5 seconds", 300)]
    [InlineData("0ft", 0)]
    public void Every_written_form_is_a_count_of_frames(string text, long frames) =>
        Assert.Equal(new Footage(frames), FilmLength.Parse(text, Gauge.Film16).Value.In(Gauge.Film16, Speed.Normal));

    [Theory]
    [InlineData("", FilmLengthFault.Empty)]
    [InlineData("   ", FilmLengthFault.Empty)]
    [InlineData("31", FilmLengthFault.NoUnit)]
    [InlineData("31.5", FilmLengthFault.NoUnit)]
    [InlineData("31in", FilmLengthFault.UnknownUnit)]
    [InlineData("31'", FilmLengthFault.UnknownUnit)]
    [InlineData("-3ft", FilmLengthFault.Negative)]
    [InlineData("31,3ft", FilmLengthFault.DecimalComma)]
    [InlineData("1:30", FilmLengthFault.Clock)]
    [InlineData("2min", FilmLengthFault.Minutes)]
    [InlineData("2m30s", FilmLengthFault.Minutes)]
    [InlineData("2m 30", FilmLengthFault.Minutes)]
    [InlineData("31+", FilmLengthFault.NoFrames)]
    [InlineData("+12", FilmLengthFault.NoFeet)]
    [InlineData("12.5fr", FilmLengthFault.PartOfAFrame)]
    [InlineData("31+12.5", FilmLengthFault.PartOfAFrame)]
    [InlineData("31ft 12.5fr", FilmLengthFault.PartOfAFrame)]
    [InlineData("31.5+12", FilmLengthFault.PartOfAFoot)]
    [InlineData("31.5ft 12fr", FilmLengthFault.PartOfAFoot)]
    [InlineData("31+40", FilmLengthFault.FramesMakeAFoot)]
    [InlineData("31+45", FilmLengthFault.FramesMakeAFoot)]
    [InlineData("100000000ft", FilmLengthFault.TooLong)]
    [InlineData("1234567890123456fr", FilmLengthFault.TooLong)]
    [InlineData("1+100000000", FilmLengthFault.TooLong)]
    [InlineData("0.000000000000001ft", FilmLengthFault.TooLong)]
    [InlineData("a reel", FilmLengthFault.NotALength)]
    [InlineData("ft", FilmLengthFault.NotALength)]
    [InlineData("12 + 3 + 4", FilmLengthFault.NotALength)]
    [InlineData("1.2.3ft", FilmLengthFault.NotALength)]
    public void A_slip_of_the_pen_has_a_name_and_advice(string text, FilmLengthFault fault)
    {
        var parsed = FilmLength.Parse(text, Gauge.Film16);

        Assert.False(parsed.Succeeded);
        Assert.False(parsed.TryGet(out _));
        Assert.Equal(fault, parsed.Fault);
        Assert.Equal(text, parsed.Slip?.Text);
    }

    [Fact]
    public void Asking_a_slip_for_its_value_is_the_programmers_mistake() =>
        Assert.Throws<InvalidOperationException>(() => FilmLength.Parse("31").Value);

    [Fact]
    public void A_length_has_no_fault_and_no_advice()
    {
        var parsed = FilmLength.Parse("31+12");

        Assert.True(parsed.TryGet(out var length));
        Assert.Equal(FilmLength.OfFeetAndFrames(31, 12), length);
        Assert.Null(parsed.Fault);
        Assert.Null(parsed.Slip);
    }

    [Theory]
    [InlineData("31+39", "16mm", null)]
    [InlineData("31+40", "16mm", FilmLengthFault.FramesMakeAFoot)]
    [InlineData("31+40", "Super 8", null)]
    [InlineData("31+16", "35mm", FilmLengthFault.FramesMakeAFoot)]
    [InlineData("0+21", "35mm 3-perf", null)]
    [InlineData("2+21", "35mm 3-perf", FilmLengthFault.FramesMakeAFoot)]
    [InlineData("0+13", "65mm", FilmLengthFault.FramesMakeAFoot)]
    public void The_frames_over_stay_below_a_foot_of_the_gauge(string text, string gauge, FilmLengthFault? fault) =>
        Assert.Equal(fault, FilmLength.Parse(text).Value.Check(Gauge.Named(gauge)!));

    [Theory]
    [InlineData("0.0125ft", 1)]
    [InlineData("0.0124ft", 0)]
    [InlineData("0.0375ft", 2)]
    public void Between_two_frames_the_nearest_is_taken_and_a_half_goes_up(string text, long frames) =>
        Assert.Equal(frames, FilmLength.Parse(text).Value.In(Gauge.Film16, Speed.Normal).Frames);

    [Fact]
    public void Only_a_time_asks_for_the_speed()
    {
        Assert.True(FilmLength.Parse("12s").Value.IsTime);
        Assert.False(FilmLength.Parse("31+12").Value.IsTime);
        Assert.Equal(192, FilmLength.Parse("12s").Value.In(Gauge.Film16, new Speed(16)).Frames);
    }

    [Fact]
    public void No_length_is_no_film() => Assert.Equal(Footage.Zero, default(FilmLength).In(Gauge.Film16, Speed.Normal));

    [Fact]
    public void A_length_is_not_negative()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => FilmLength.OfFrames(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => FilmLength.OfFeetAndFrames(1, -1));
    }

    [Fact]
    public void Feet_and_frames_come_back_in_every_gauge() =>
        Gen.Select(Gen.Long[0, 5_000_000], _gauges)
            .Sample(
                (frames, gauge) =>
                {
                    var written = new Footage(frames).FeetAndFrames(gauge);
                    return FilmLength.Parse(written, gauge).Value.In(gauge, Speed.Normal).Frames == frames;
                }
            );

    [Fact]
    public void Every_written_form_reads_back_as_it_was() =>
        Gen.OneOf(
                Gen.Long[0, 1_000_000].Select(FilmLength.OfFrames),
                Gen.Select(Gen.Long[0, 10_000], Gen.Long[0, 39]).Select(FilmLength.OfFeetAndFrames),
                Millionths().Select(FilmLength.OfFeet),
                Millionths().Select(FilmLength.OfMetres),
                Millionths().Select(FilmLength.OfSeconds)
            )
            .Sample(length => FilmLength.Parse(length.ToString()).Value == length);

    static Gen<Ratio> Millionths() => Gen.Long[0, 5_000_000_000].Select(n => new Ratio(n, 1_000_000));
}
