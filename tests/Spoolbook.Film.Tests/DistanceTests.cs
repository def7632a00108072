namespace Spoolbook.Film.Tests;

public class DistanceTests
{
    [Fact]
    public void Feet_and_metres_are_millimetres()
    {
        Assert.Equal(new Distance(1500, false), Distance.FromMetres(new Ratio(3, 2)));
        Assert.Equal(new Distance(Ratio.FromDecimal(1828.8m), false), Distance.FromFeet(6));
    }

    [Fact]
    public void Infinity_is_no_distance_in_millimetres()
    {
        Assert.True(Distance.Infinity.IsInfinity);
        Assert.False(default(Distance).IsInfinity);
        Assert.NotEqual(default, Distance.Infinity);
    }
}
