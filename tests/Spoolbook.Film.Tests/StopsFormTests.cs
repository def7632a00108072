namespace Spoolbook.Film.Tests;

public class StopsFormTests
{
    [Theory]
    [InlineData("1", 1)]
    [InlineData("-1", -1)]
    [InlineData("+2", 2)]
    [InlineData("0", 0)]
    [InlineData("0.5", 0.5)]
    [InlineData("1/2", 0.5)]
    [InlineData("-2/3", -2 / 3.0)]
    [InlineData("1 3/5", 1.6)]
    [InlineData("- 1 1/2", -1.5)]
    public void An_amount_of_stops_is_read_in_any_of_its_forms(string text, double stops) =>
        Assert.Equal(stops, Stops.Parse(text).Value, 1e-12);

    [Theory]
    [InlineData("", StopsFault.Empty)]
    [InlineData("-", StopsFault.Empty)]
    [InlineData("0,5", StopsFault.DecimalComma)]
    [InlineData("1/0", StopsFault.OverZero)]
    [InlineData("31", StopsFault.TooMany)]
    [InlineData("a bit", StopsFault.NotAnAmount)]
    [InlineData("1 2 3/4", StopsFault.NotAnAmount)]
    [InlineData("1/2/3", StopsFault.NotAnAmount)]
    [InlineData("9999999999", StopsFault.NotAnAmount)]
    public void Anything_else_fails_in_one_named_way(string text, StopsFault fault) => Assert.Equal(fault, Stops.Parse(text).Fault);
}
