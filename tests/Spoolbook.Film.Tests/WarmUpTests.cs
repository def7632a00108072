namespace Spoolbook.Film.Tests;

public class WarmUpTests
{
    // Kodak, Storage and Handling of Unprocessed Film (KH19), table of warm-up times.
    [Theory]
    [InlineData("8mm", 14, 1, 1)]
    [InlineData("8mm", 55, 3, 2)]
    [InlineData("16mm", 14, 1, 1)]
    [InlineData("16mm", 55, 3, 2)]
    [InlineData("35mm", 14, 3, 1)]
    [InlineData("35mm", 55, 5, 1)]
    public void Film_warms_up_as_long_as_its_maker_says(string gauge, int rise, int hours, int over) =>
        Assert.Equal(new Ratio(hours, over), WarmUp.Hours(Gauge.Named(gauge)!, rise));

    // H15 H: Kodak H-1-5218t (2006): 13 °C or lower, and -18 °C or lower for longer; H17 H: KH19: down to -23 °C. To KH19's 21 °C.
    [Theory]
    [InlineData(13, 1, 1)]
    [InlineData(7, 1, 1)]
    [InlineData(-18, 3, 2)]
    [InlineData(-23, 3, 2)]
    public void From_a_published_cold_store_to_a_room_the_table_has_a_time(int degrees, int hours, int over) =>
        Assert.Equal(new Ratio(hours, over), WarmUp.Hours(Gauge.Film16, 21 - degrees));

    [Fact]
    public void Between_the_two_rises_of_the_table_the_longer_time_holds() =>
        Assert.Equal(new Ratio(3, 2), WarmUp.Hours(Gauge.Film16, WarmUp.SmallRise + 1));

    [Fact]
    public void What_need_not_warm_up_need_not_wait() => Assert.Equal(Ratio.Zero, WarmUp.Hours(Gauge.Film16, 0));

    [Fact]
    public void No_time_is_made_up_for_a_rise_outside_the_table() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => WarmUp.Hours(Gauge.Film16, WarmUp.LargeRise + 1));
}
