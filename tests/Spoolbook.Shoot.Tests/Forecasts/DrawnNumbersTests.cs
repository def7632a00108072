using Spoolbook.Shoot.Forecasts;

namespace Spoolbook.Shoot.Tests.Forecasts;

public class DrawnNumbersTests
{
    [Fact]
    public void The_numbers_are_those_of_the_published_generator()
    {
        // The first round of its authors' demonstration program: seed 42, stream 54.
        var numbers = new DrawnNumbers(42, 54);
        Assert.Equal(
            [0xa15c02b7, 0x7b47f409, 0xba1d3330, 0x83d2f293, 0xbfa4784b, 0xcbed606e],
            Enumerable.Range(0, 6).Select(_ => numbers.Next())
        );
    }

    [Fact]
    public void A_number_below_a_bound_is_as_often_each_of_them()
    {
        var numbers = new DrawnNumbers(1, 1);
        var counts = Enumerable.Range(0, 60_000).Select(_ => numbers.Below(6)).GroupBy(n => n).ToDictionary(g => g.Key, g => g.Count());
        Assert.Equal([0, 1, 2, 3, 4, 5], counts.Keys.Order());

        // 10,000 each; five standard deviations are 456.
        Assert.All(counts.Values, count => Assert.InRange(count, 9_544, 10_456));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(7)]
    public void Chi_square_has_its_degrees_for_a_mean_and_twice_them_for_a_variance(int degrees)
    {
        var numbers = new DrawnNumbers(2, 1);
        var drawn = Enumerable.Range(0, 40_000).Select(_ => numbers.ChiSquare(degrees)).ToList();
        var mean = drawn.Average();
        Assert.InRange(mean, degrees * 0.96, degrees * 1.04);
        Assert.InRange(drawn.Average(d => (d - mean) * (d - mean)), degrees * 2 * 0.9, degrees * 2 * 1.1);
    }
}
