using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Tests.Sheets;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;

namespace Spoolbook.Shoot.Tests.Kit;

// Daylight is 181.8 mireds (5500 K), tungsten light 312.5 (3200 K): 130.7 apart. The kelvins are those that colour film is balanced
// for (common practice); mireds are a million over them.
public class LightMatchTests
{
    // Thirds of a stop: Eastman Kodak's slides on filters; shifts: a colour meter's manual (as in Film's table of light filters).
    // What is written in the kit is made up.
    [Theory]
    [InlineData("85", null, 112.0)]
    [InlineData("80a", null, -131.0)]
    [InlineData("85", 120, 120.0)]
    [InlineData("ND6", null, 0.0)]
    [InlineData("nd9", null, 0.0)]
    [InlineData("ND6", 4, 4.0)]
    [InlineData("Diffusion 1", null, null)]
    public void A_filter_shifts_as_written_else_as_its_name_says_and_a_grey_one_not_at_all(string name, int? mireds, double? shift) =>
        Assert.Equal(shift, LightMatch.ShiftOf(Kit(name, mireds: mireds), name));

    [Fact]
    public void A_filter_that_the_kit_does_not_have_shifts_as_its_name_says() => Assert.Equal(112, LightMatch.ShiftOf(null, "85"));

    [Theory]
    [InlineData(ColourBalance.Daylight)]
    [InlineData(ColourBalance.None)]
    public void Only_tungsten_stock_wants_a_filter_in_daylight(ColourBalance stock) =>
        Assert.Null(LightMatch.DaylightFilter(With(Kit("85")), stock));

    [Fact]
    public void Of_two_filters_that_turn_tungsten_stock_the_lighter_is_taken()
    {
        Assert.Equal(("85B", 2 / 3.0), InDaylight(Kit("85N3"), Kit("85B")));
        Assert.Equal(("85B", 2 / 3.0), InDaylight(Kit("85B"), Kit("85N3")));
    }

    // 80A shifts the other way; 81EF gives 52 of 130.7; 85C gives 81, and 49.7 are missing, less than 65.
    [Theory]
    [InlineData("80A", "85", 2 / 3.0)]
    [InlineData("81EF", "85", 2 / 3.0)]
    [InlineData("85C", "85C", 1 / 3.0)]
    [InlineData("ND6", "85", 2 / 3.0)]
    public void A_kit_without_a_filter_that_turns_the_light_needs_the_85(string kit, string name, double stops) =>
        Assert.Equal((name, stops), InDaylight(Kit(kit)));

    [Fact]
    public void An_empty_kit_needs_the_85() => Assert.Equal(("85", 2 / 3.0), InDaylight());

    [Fact]
    public void Stops_written_in_the_kit_come_before_the_makers_table()
    {
        Assert.Equal(("85N3", 5 / 3.0), InDaylight(Kit("85N3")));
        Assert.Equal(("85N3", 1.5), InDaylight(Kit("85N3", stops: 1.5)));
    }

    [Fact]
    public void A_filter_of_no_table_whose_stops_nobody_wrote_takes_no_light() =>
        Assert.Equal(("Straw", 0.0), InDaylight(Kit("Straw", mireds: 125)));

    [Fact]
    public void A_filter_exactly_as_far_off_as_allowed_serves()
    {
        var off = Math.Abs(112 - LightMatch.Wanted(ColourBalance.Tungsten, SubjectLight.Daylight));

        Assert.True(LightMatch.Serves(With(Kit("85")), ColourBalance.Tungsten, SubjectLight.Daylight, off));
        Assert.False(LightMatch.Serves(With(Kit("85")), ColourBalance.Tungsten, SubjectLight.Daylight, Math.BitDecrement(off)));
    }

    static Filter Kit(string name, double? stops = null, int? mireds = null) =>
        new(default, Written(name), null, Perhaps(stops), Perhaps(mireds), new Returned(1, null, null));

    static Production With(params Filter[] kit) => SmallProduction.Of() with { Filters = [.. kit] };

    static (string Name, double Stops)? InDaylight(params Filter[] kit) =>
        LightMatch.DaylightFilter(With(kit), ColourBalance.Tungsten);
}
