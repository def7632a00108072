namespace Spoolbook.Film.Tests;

public class DistanceFormTests
{
    // An inch is 25.4 mm by definition.
    [Theory]
    [InlineData("6ft", 1828.8)]
    [InlineData("5ft 6in", 1676.4)]
    [InlineData("5ft6in", 1676.4)]
    [InlineData("1.5 ft", 457.2)]
    [InlineData("1 foot", 304.8)]
    [InlineData("6 feet 6in", 1981.2)]
    [InlineData("30in", 762)]
    [InlineData("1.8m", 1800)]
    [InlineData("80cm", 800)]
    [InlineData(" 450 mm ", 450)]
    public void A_distance_is_read_in_any_of_its_forms(string text, double millimetres)
    {
        var distance = Distance.Parse(text).Value;

        Assert.False(distance.IsInfinity);
        Assert.Equal(millimetres, distance.Millimetres.ToDouble(), 1e-9);
    }

    // An assistant looks for the figure on the ring, and the ring has one unit.
    [Theory]
    [InlineData("40ft", "40 ft")]
    [InlineData("5ft6in", "5 ft 6 in")]
    [InlineData("1.8m", "1.8 m")]
    [InlineData(" 450 mm ", "450 mm")]
    public void A_distance_keeps_how_it_was_written(string text, string written)
    {
        Assert.Equal(written, Distance.Parse(text).Value.Written);
        Assert.Equal(Distance.Parse(text).Value, Distance.Parse(text).Value with { Written = null });
    }

    [Theory]
    [InlineData("inf")]
    [InlineData("infinity")]
    [InlineData("∞")]
    public void Infinity_is_a_distance(string text) => Assert.Equal(Distance.Infinity, Distance.Parse(text).Value);

    [Theory]
    [InlineData("", DistanceFault.Empty)]
    [InlineData("6", DistanceFault.NoUnit)]
    [InlineData("-6ft", DistanceFault.Negative)]
    [InlineData("1,8m", DistanceFault.DecimalComma)]
    [InlineData("5ft 14in", DistanceFault.InchesMakeAFoot)]
    [InlineData("6-9ft", DistanceFault.TwoDistances)]
    [InlineData("6ft–9ft", DistanceFault.TwoDistances)]
    [InlineData("5ft 6in to 9ft", DistanceFault.TwoDistances)]
    [InlineData("1.8m > inf", DistanceFault.TwoDistances)]
    [InlineData("6/9ft", DistanceFault.TwoDistances)]
    [InlineData("6ft-", DistanceFault.NotADistance)]
    [InlineData("6-9", DistanceFault.NotADistance)]
    [InlineData("close to 9ft", DistanceFault.NotADistance)]
    [InlineData("near", DistanceFault.NotADistance)]
    [InlineData("6 yards", DistanceFault.NotADistance)]
    [InlineData("1m 20cm", DistanceFault.NotADistance)]
    [InlineData("5ft 6in 2in", DistanceFault.NotADistance)]
    [InlineData("5ft six", DistanceFault.NotADistance)]
    [InlineData("9999999999999m", DistanceFault.NotADistance)]
    [InlineData("1.m", DistanceFault.NotADistance)]
    public void Anything_else_fails_in_one_named_way(string text, DistanceFault fault) => Assert.Equal(fault, Distance.Parse(text).Fault);
}
