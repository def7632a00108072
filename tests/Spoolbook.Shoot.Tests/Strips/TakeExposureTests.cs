using Spoolbook.Film;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;
using Spoolbook.Shoot.Tests.Sheets;

namespace Spoolbook.Shoot.Tests.Strips;

public class TakeExposureTests
{
    // Common practice: a quarter closed counts as half a stop, half closed as one; the last two are by the opening itself.
    [Theory]
    [InlineData("open", 0)]
    [InlineData("quarter", -0.5)]
    [InlineData("half", -1)]
    [InlineData("closed", double.NegativeInfinity)]
    [InlineData("1/4", -2)]
    [InlineData("0.5", -1)]
    [InlineData("50%", -1)]
    [InlineData("sideways", 0)]
    public void A_part_closed_shutter_costs_what_its_mark_counts(string mark, double stops) =>
        Assert.Equal(stops, Of(t => t with { Shutter = Sheet.Written(mark) }).Stops, 1e-9);

    // The meter gave 16 and the lens was set to 11, one stop more open; the half shutter takes it away again.
    [Fact]
    public void A_half_shutter_that_the_lens_makes_up_for_is_normal()
    {
        var exposure = Of(t => Metered(t, "11", "16") with { Shutter = Sheet.Written("half") });

        Assert.Equal(["lens at 11, meter asked for 16", "shutter half"], exposure.Terms.Select(t => t.Name));
        Assert.Equal([1, -1], exposure.Terms.Select(t => Math.Round(t.Stops, 9)));
        Assert.Equal(0, exposure.Stops, 1e-9);
    }

    // The lens was set to what the meter gave, and the filter of 2/3 stop was forgotten.
    [Fact]
    public void A_filter_that_the_lens_does_not_make_up_for_is_under() =>
        Assert.Equal(-2 / 3.0, Of(t => Metered(t, "8", "8") with { Filters = [Sheet.Written("85")] }).Stops, 1e-9);

    [Fact]
    public void A_filter_alone_means_nothing_without_a_reading() =>
        Assert.Equal(0, Of(t => t with { Stop = At("8"), Filters = [Sheet.Written("85")] }).Stops);

    [Fact]
    public void An_intended_exposure_comes_before_the_settings() =>
        Assert.Equal(-1, Of(t => Metered(t, "5.6", "8") with { Exposed = Sheet.Written(-1.0) }).Stops);

    [Fact]
    public void A_closed_shutter_is_black_at_any_intended_exposure() =>
        Assert.Equal(double.NegativeInfinity, Of(t => t with { Exposed = Sheet.Written(-1.0), Shutter = Sheet.Written("closed") }).Stops);

    static Take Metered(Take take, string stop, string reading) => take with { Stop = At(stop), Reading = At(reading) };

    static Located<Stop> At(string stop) => Sheet.Written(Stop.Parse(stop).Value);

    static TakeExposure Of(Func<Take, Take> written)
    {
        var sheet = Sheet.Of(Sheet.At(20)).Take("1A/1", to: Sheet.At(10), also: written);
        return TakeExposure.Of(SmallProduction.Of(sheet), sheet.Roll.Takes.Single(), "B1");
    }
}
