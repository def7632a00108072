using CsCheck;

namespace Spoolbook.Film.Tests;

public class LargestRemainderTests
{
    // 12.66, 8.35, 5.21 and 4.25 m as they were printed make 30.47, and the can holds 30.48 m (100 ft).
    [Fact]
    public void What_is_printed_of_a_roll_adds_up_to_what_was_loaded()
    {
        Ratio[] parts = [new(12_664, 10), new(8354, 10), new(5214, 10), new(4248, 10)];

        Assert.Equal([1266, 835, 521, 425], parts.Select(p => (long)p.Round()));
        Assert.Equal([1267, 835, 521, 425], LargestRemainder.Round(parts, 3048));
    }

    [Fact]
    public void No_part_is_off_by_a_whole_unit_and_nothing_stays_nothing() =>
        Gen.Long[0, 1_000_000]
            .Array[1, 12]
            .Where(parts => parts.Any(p => p > 0))
            .Sample(parts =>
            {
                Ratio[] exact = [.. parts.Select(p => new Ratio(p, 1000))];
                var sum = (long)new Ratio(parts.Sum(), 1000).Round();
                var rounded = LargestRemainder.Round(exact, sum);
                Assert.Equal(sum, rounded.Sum());
                Assert.All(exact.Zip(rounded), p => Assert.InRange((p.First - p.Second).ToDouble(), -1, 1));
                Assert.All(exact.Zip(rounded).Where(p => p.First.Sign == 0), p => Assert.Equal(0, p.Second));
            });

    [Fact]
    public void Parts_of_a_sum_that_is_far_off_still_make_it_up()
    {
        Assert.Equal([3, 4], LargestRemainder.Round([1, 2], 7));
        Assert.Equal(2, LargestRemainder.Round([new(3, 2), new(5, 2)], 2).Sum());
        Assert.Empty(LargestRemainder.Round([], 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => LargestRemainder.Round([0, 0], 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => LargestRemainder.Round([-1], 0));
    }
}
