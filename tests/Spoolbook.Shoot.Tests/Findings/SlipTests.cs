using Spoolbook.Film;
using Spoolbook.Film.Exposures;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Shoot.Tests.Findings;

/// <summary>Advice for slips in writing: each slip has its own.</summary>
public class SlipTests
{
    [Theory]
    [InlineData("", "the length is empty: write 31+12 (feet + frames), 31.3ft, 1252fr, 9.5m or 12s")]
    [InlineData("31", "'31' has no unit: write 31+12 (feet + frames), 31.3ft, 1252fr, 9.5m or 12s")]
    [InlineData("31in", "'31in' has a unit that film is not measured in here: write 31+12 (feet + frames), 31.3ft, 1252fr, 9.5m or 12s")]
    [InlineData("-3ft", "'-3ft' is less than 0: a length or a position counts up from 0")]
    [InlineData("31,3ft", "'31,3ft' has a comma: write the decimals after a point, 31.3ft")]
    [InlineData("1:30", "'1:30' is written as on a clock: write the time in seconds, 90s")]
    [InlineData("2min", "'2min' has minutes in it, and m stands for metres: write the time in seconds, 150s")]
    [InlineData("31+", "'31+' has no frames after the plus: write 31+00 for whole feet")]
    [InlineData("+12", "'+12' has no feet before the plus: write 0+12, or 12fr")]
    [InlineData("12.5fr", "'12.5fr' has a part of a frame: frames are whole")]
    [InlineData("31.5+12", "'31.5+12' has a part of a foot before its frames: write 31+12 or 31.3ft")]
    [InlineData("31+45", "'31+45' has a foot or more in its frames (40 frames make a foot of 16mm): carry it to the feet")]
    [InlineData("100000000ft", "'100000000ft' is longer than film comes: write 31+12 (feet + frames), 31.3ft, 1252fr, 9.5m or 12s")]
    [InlineData("a reel", "'a reel' is not a length: write 31+12 (feet + frames), 31.3ft, 1252fr, 9.5m or 12s")]
    public void A_wrong_length_says_how_to_write_it(string text, string advice) =>
        Assert.Equal(advice, Said(FilmLength.Parse(text, Gauge.Film16).Slip));

    [Theory]
    [InlineData("", "the speed is empty: write 24, 12.5, 23.976 or 24000/1001 (frames a second)")]
    [InlineData("0", "'0' is no speed: film runs at more than 0 frames a second")]
    [InlineData("12,5", "'12,5' has a comma: write the decimals after a point, 12.5")]
    [InlineData("24/0", "'24/0' divides by nothing: write 24, 12.5, 23.976 or 24000/1001 (frames a second)")]
    [InlineData("100001", "'100001' is faster than film runs: write 24, 12.5, 23.976 or 24000/1001 (frames a second)")]
    [InlineData("slow", "'slow' is not a speed: write 24, 12.5, 23.976 or 24000/1001 (frames a second)")]
    public void A_wrong_speed_says_how_to_write_it(string text, string advice) => Assert.Equal(advice, Said(Speed.Parse(text).Slip));

    [Theory]
    [InlineData("", "the stop is empty: write 5.6, f/5.6, T5.6, 4/5.6 (a split) or 5.6 1/3")]
    [InlineData("0", "'0' is no stop: stops are above 0")]
    [InlineData("5,6", "'5,6' has a comma: write the decimals after a point, 5.6")]
    [InlineData("4/8", "'4/8' splits two stops that are not neighbours: write the wider first, 4/5.6")]
    [InlineData("5.6 4/3", "'5.6 4/3' adds a stop or more, or nothing: write the next stop, or a part such as 5.6 1/3")]
    [InlineData("1000", "'1000' is beyond any lens: write 5.6, f/5.6, T5.6, 4/5.6 (a split) or 5.6 1/3")]
    [InlineData("wide open", "'wide open' is not a stop: write 5.6, f/5.6, T5.6, 4/5.6 (a split) or 5.6 1/3")]
    public void A_wrong_stop_says_how_to_write_it(string text, string advice) => Assert.Equal(advice, Said(Stop.Parse(text).Slip));

    [Theory]
    [InlineData("", "the distance is empty: write 6ft, 5ft 6in, 1.8m, 80cm or inf")]
    [InlineData("6", "'6' has no unit: write 6ft, 5ft 6in, 1.8m, 80cm or inf")]
    [InlineData("-6ft", "'-6ft' is less than 0: write 6ft, 5ft 6in, 1.8m, 80cm or inf")]
    [InlineData("1,8m", "'1,8m' has a comma: write the decimals after a point, 1.8m")]
    [InlineData("5ft 12in", "'5ft 12in' has a foot or more in its inches: carry it to the feet")]
    [InlineData(
        "6-9ft",
        "'6-9ft' is two distances: write where the pull began, 6ft, and where it ended in `note`; a subject that moves is "
            + "`measured: [6ft, 9ft]`"
    )]
    [InlineData("near", "'near' is not a distance: write 6ft, 5ft 6in, 1.8m, 80cm or inf")]
    public void A_wrong_distance_says_how_to_write_it(string text, string advice) => Assert.Equal(advice, Said(Distance.Parse(text).Slip));

    [Theory]
    [InlineData("", "the number of stops is empty: write 1, -1, 0.5, 1/2 or 1 3/5")]
    [InlineData("0,5", "'0,5' has a comma: write the decimals after a point, 0.5")]
    [InlineData("1/0", "'1/0' divides by nothing: write 1, -1, 0.5, 1/2 or 1 3/5")]
    [InlineData("31", "'31' is more stops than anything takes: write 1, -1, 0.5, 1/2 or 1 3/5")]
    [InlineData("half", "'half' is not a number of stops: write 1, -1, 0.5, 1/2 or 1 3/5")]
    public void A_wrong_number_of_stops_says_how_to_write_it(string text, string advice) =>
        Assert.Equal(advice, Said(Stops.Parse(text).Slip));

    [Fact]
    public void A_time_lapse_that_cannot_be_worked_out_says_why()
    {
        Assert.Equal(
            "give two of these three: the interval, the event, and the frames or the screen time",
            Said(TimeLapse.Solve(Speed.Normal).Slip)
        );
        Assert.Equal(
            "every figure of a time-lapse is above nothing: give an interval such as 12s",
            Said(TimeLapse.Solve(Speed.Normal, interval: 0).Slip)
        );
        Assert.Equal(
            "the frames do not last that screen time: leave one of the two out",
            Said(TimeLapse.Solve(Speed.Normal, frames: new Footage(24), screenTime: 2).Slip)
        );
        Assert.Equal(
            "the interval times the frames is not the event: leave one of them out",
            Said(TimeLapse.Solve(Speed.Normal, interval: 1, @event: 25, frames: new Footage(24)).Slip)
        );
        Assert.Equal(
            "the event is over before the first interval is: give a shorter interval",
            Said(TimeLapse.Solve(Speed.Normal, interval: 10, @event: 9).Slip)
        );
    }

    [Theory]
    [InlineData("", "there is nothing where a time should be: write 12s, 90min or 3h")]
    [InlineData("12", "'12' has no unit: write 12s, 90min or 3h")]
    [InlineData("12kg", "'12kg' has a unit that does not measure a time: write 12s, 90min or 3h")]
    [InlineData("1,5h", "'1,5h' has a comma: write the decimals after a point")]
    [InlineData("-3h", "'-3h' is less than 0: write 12s, 90min or 3h")]
    [InlineData("1/0s", "'1/0s' divides by nothing: write 12s, 90min or 3h")]
    [InlineData("1234567890123456s", "'1234567890123456s' is more than there can be: write 12s, 90min or 3h")]
    [InlineData("1/1234567890123456s", "'1/1234567890123456s' is more than there can be: write 12s, 90min or 3h")]
    [InlineData("long", "'long' is not a time: write 12s, 90min or 3h")]
    public void A_wrong_time_says_how_to_write_it(string text, string advice) => Assert.Equal(advice, Said(Measure.Seconds(text).Slip));

    [Fact]
    public void Every_figure_says_what_it_is()
    {
        Assert.Equal("'0mm' is nothing, and must be more: write 25mm, 6.1cm or 2in", Said(Measure.Millimetres("0mm").Slip));
        Assert.Equal("'80' has no unit: write 80fc (footcandles) or 860lx", Said(Measure.Lux("80").Slip));
        Assert.Equal("'dim' is not light on the subject: write 80fc (footcandles) or 860lx", Said(Measure.Lux("dim").Slip));
        Assert.Equal("'dim' is not light from the subject: write 3200cd/m2", Said(Measure.Candelas("dim").Slip));
        Assert.Equal("'120%' is more than there can be: write 20%, 0.2 or 1/5", Said(Measure.Part("120%").Slip));
        Assert.Equal("'25' has no unit: write 25mm, 6.1cm or 2in", Said(Measure.Millimetres("25").Slip));
        Assert.Equal("'wide' is not a size: write 25mm, 6.1cm or 2in", Said(Measure.Millimetres("wide").Slip));
        Assert.Equal("'361' is more than there can be: write 133 or 172.8deg, at most 360", Said(Measure.Degrees("361").Slip));
        Assert.Equal("'wide' is not an angle: write 133 or 172.8deg, at most 360", Said(Measure.Degrees("wide").Slip));
        Assert.Equal("'fast' is not a number above zero: write 400, 12.5 or 5/2", Said(Measure.Number("fast").Slip));
        Assert.Equal("'10.1' is more than there can be: write 0.6, at most 10", Said(Measure.Density("10.1").Slip));
        Assert.Equal("'grey' is not a density: write 0.6, at most 10", Said(Measure.Density("grey").Slip));
        Assert.Equal("'half' is not a part of a whole: write 20%, 0.2 or 1/5", Said(Measure.Part("half").Slip));
    }

    [Theory]
    [InlineData("10s", "'10s' is not a time and the stops to open by: write 10s:1, or the corrected time, 10s:50s")]
    [InlineData("10:1", "'10' has no unit: write 12s, 90min or 3h")]
    [InlineData("0s:1", "'0s:1' has an exposure that lasts no time: write 10s:1")]
    [InlineData("10s:much", "'much' is not a number of stops: write 1, -1, 0.5, 1/2 or 1 3/5")]
    [InlineData("10s:-1", "'10s:-1' gives less light, and film at long times needs more: write 10s:1")]
    [InlineData("10s:5s", "'10s:5s' corrects to a shorter time than the meter gave: write 10s:50s")]
    public void A_wrong_line_of_a_reciprocity_table_says_how_to_write_it(string text, string advice) =>
        Assert.Equal(advice, Said(ReciprocityPoint.Parse(text).Slip));

    [Fact]
    public void A_slip_is_said_in_the_language_of_the_papers() =>
        Assert.Equal(
            "'31' hat keine Einheit: 31+12 (Fuß + Bilder), 31.3ft, 1252fr, 9.5m oder 12s schreiben",
            SlipSentences.Of(FilmLength.Parse("31").Slip!).Whole.In(SentenceTexts.For("de"))
        );

    static string Said(Slip? slip) => SlipSentences.Of(Assert.IsType<Slip>(slip)).Whole.ToString();
}
