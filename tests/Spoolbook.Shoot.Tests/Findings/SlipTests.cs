using Spoolbook.Film.Exposures;

namespace Spoolbook.Film.Tests;

/// <summary>Advice for slips in writing: each slip has its own.</summary>
public class AdviceTests
{
    [Theory]
    [InlineData("", "the length is empty: write 31+12 (feet + frames), 31.3ft, 1252fr, 9.5m or 12s")]
    [InlineData("31", "'31' has no unit: write 31+12 (feet + frames), 31.3ft, 1252fr, 9.5m or 12s")]
    [InlineData("31in", "'31in' has a unit that film is not measured in here: write 31+12 (feet + frames), 31.3ft, 1252fr, 9.5m or 12s")]
    [InlineData("-3ft", "'-3ft' is below nothing: a length or a position counts up from 0")]
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
        Assert.Equal(advice, FilmLength.Parse(text, Gauge.Film16).Advice);

    [Theory]
    [InlineData("", "the speed is empty: write 24, 12.5, 23.976 or 24000/1001 (frames a second)")]
    [InlineData("0", "'0' is no speed: film runs at more than 0 frames a second")]
    [InlineData("12,5", "'12,5' has a comma: write the decimals after a point, 12.5")]
    [InlineData("24/0", "'24/0' divides by nothing: write 24, 12.5, 23.976 or 24000/1001 (frames a second)")]
    [InlineData("100001", "'100001' is faster than film runs: write 24, 12.5, 23.976 or 24000/1001 (frames a second)")]
    [InlineData("slow", "'slow' is not a speed: write 24, 12.5, 23.976 or 24000/1001 (frames a second)")]
    public void A_wrong_speed_says_how_to_write_it(string text, string advice) => Assert.Equal(advice, Speed.Parse(text).Advice);

    [Theory]
    [InlineData("", "the stop is empty: write 5.6, f/5.6, T5.6, 4/5.6 (a split) or 5.6 1/3")]
    [InlineData("0", "'0' is no stop: stops are above 0")]
    [InlineData("5,6", "'5,6' has a comma: write the decimals after a point, 5.6")]
    [InlineData("4/8", "'4/8' splits two stops that are not neighbours: write the wider first, 4/5.6")]
    [InlineData("5.6 4/3", "'5.6 4/3' adds a stop or more, or nothing: write the next stop, or a part such as 5.6 1/3")]
    [InlineData("1000", "'1000' is beyond any lens: write 5.6, f/5.6, T5.6, 4/5.6 (a split) or 5.6 1/3")]
    [InlineData("wide open", "'wide open' is not a stop: write 5.6, f/5.6, T5.6, 4/5.6 (a split) or 5.6 1/3")]
    public void A_wrong_stop_says_how_to_write_it(string text, string advice) => Assert.Equal(advice, Stop.Parse(text).Advice);

    [Theory]
    [InlineData("", "the distance is empty: write 6ft, 5ft 6in, 1.8m, 80cm or inf")]
    [InlineData("6", "'6' has no unit: write 6ft, 5ft 6in, 1.8m, 80cm or inf")]
    [InlineData("-6ft", "'-6ft' is below nothing: write 6ft, 5ft 6in, 1.8m, 80cm or inf")]
    [InlineData("1,8m", "'1,8m' has a comma: write the decimals after a point, 1.8m")]
    [InlineData("5ft 12in", "'5ft 12in' has a foot or more in its inches: carry it to the feet")]
    [InlineData("near", "'near' is not a distance: write 6ft, 5ft 6in, 1.8m, 80cm or inf")]
    public void A_wrong_distance_says_how_to_write_it(string text, string advice) => Assert.Equal(advice, Distance.Parse(text).Advice);

    [Theory]
    [InlineData("", "the number of stops is empty: write 1, -1, 0.5, 1/2 or 1 3/5")]
    [InlineData("0,5", "'0,5' has a comma: write the decimals after a point, 0.5")]
    [InlineData("1/0", "'1/0' divides by nothing: write 1, -1, 0.5, 1/2 or 1 3/5")]
    [InlineData("31", "'31' is more stops than anything takes: write 1, -1, 0.5, 1/2 or 1 3/5")]
    [InlineData("half", "'half' is not a number of stops: write 1, -1, 0.5, 1/2 or 1 3/5")]
    public void A_wrong_number_of_stops_says_how_to_write_it(string text, string advice) => Assert.Equal(advice, Stops.Parse(text).Advice);

    [Fact]
    public void A_time_lapse_that_cannot_be_worked_out_says_why()
    {
        Assert.Equal(
            "give two of these three: the interval, the event, and the frames or the screen time",
            TimeLapse.Solve(Speed.Normal).Advice
        );
        Assert.Equal(
            "every figure of a time-lapse is above nothing: give an interval such as 12s",
            TimeLapse.Solve(Speed.Normal, interval: 0).Advice
        );
        Assert.Equal(
            "the frames do not last that screen time: leave one of the two out",
            TimeLapse.Solve(Speed.Normal, frames: new Footage(24), screenTime: 2).Advice
        );
        Assert.Equal(
            "the interval times the frames is not the event: leave one of them out",
            TimeLapse.Solve(Speed.Normal, interval: 1, @event: 25, frames: new Footage(24)).Advice
        );
        Assert.Equal(
            "the event is over before the first interval is: give a shorter interval",
            TimeLapse.Solve(Speed.Normal, interval: 10, @event: 9).Advice
        );
    }

    [Fact]
    public void What_was_never_read_has_no_value() => Assert.Equal("nothing was read", default(Parsed<Speed, SpeedFault>).Advice);

    [Fact]
    public void A_programmers_mistake_has_a_message()
    {
        Describe("A speed is above 0 frames a second.", () => new Speed(0));
        Describe("A shutter opens more than 0 and at most 360 degrees.", () => new Shutter(0));
        Describe("An exposure lasts longer than nothing.", () => new ExposureTime(0));
        Describe("A finder takes from none to less than all of the light.", () => default(ExposureTime).Adapted(1));
        Describe("The part of a shutter that is open is from 0 to 1.", () => ShutterOpening.ByOpening("wide", 2));
        Describe("A length that is written down is not negative.", () => FilmLength.OfFrames(-1));
        Describe("A running time is not negative.", () => RunningTime.Text(-1, 0));
        Describe("A ratio cannot have a denominator of zero.", () => new Ratio(1, 0));
        Describe("A reciprocity table has rising times above 0, and corrections of 0 or more.", () => new ReciprocityTable());
        Describe("There is no value: '31' has no unit", () => FilmLength.Parse("31").Value);
    }

    static void Describe(string words, Func<object> mistake) =>
        Assert.Contains(words, Assert.ThrowsAny<Exception>(mistake).Message, StringComparison.Ordinal);
}
