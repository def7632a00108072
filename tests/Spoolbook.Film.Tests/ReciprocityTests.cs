using CsCheck;
using Spoolbook.Film.Exposures;

namespace Spoolbook.Film.Tests;

public class ReciprocityTests
{
    // F14 M: Eastman Kodak F-4017, from memory: a black-and-white film of 400.
    static readonly ReciprocityTable _panchromatic = new(new(0.1, 0), new(1, 1), new(10, 2), new(100, 3));

    [Theory]
    [InlineData(0.1, 0)]
    [InlineData(1, 1)] // F14 M
    [InlineData(10, 2)] // F14 M
    [InlineData(100, 3)] // F14 M
    [InlineData(3.16227766, 1.5)]
    public void Between_two_times_the_correction_runs_with_the_logarithm(double seconds, double stops) =>
        Assert.Equal(stops, _panchromatic.CorrectionAt(seconds) ?? double.NaN, 6);

    [Theory]
    [InlineData(0.09)]
    [InlineData(101)]
    public void Outside_the_table_nobody_knows(double seconds) => Assert.Null(_panchromatic.CorrectionAt(seconds));

    [Theory]
    [InlineData(0.001, 0.2)] // F11 H: Eastman Kodak E-31: most films, 1/1000 to 1/5 s
    [InlineData(0.001, 0.1)] // F12 H: Eastman Kodak 2403, aerial film, 1/1000 to 1/10 s
    [InlineData(0.0004, 1)] // F13 H: Eastman Kodak H-1-5386, print film, 1/2500 to 1 s
    public void Where_the_law_holds_nothing_is_added(double shortest, double longest)
    {
        var table = new ReciprocityTable(new(shortest, 0), new(longest, 0));

        Gen.Double[shortest, longest].Sample(seconds => table.CorrectionAt(seconds) == 0);
        Assert.Null(table.CorrectionAt(longest * 1.01));
    }

    [Fact]
    public void A_correction_is_between_its_neighbours() =>
        Gen.Double[0.1, 100]
            .Sample(seconds =>
                _panchromatic.CorrectionAt(seconds) is >= 0 and <= 3
                && Math.Abs(_panchromatic.CorrectionAt(seconds)!.Value - (Math.Log10(seconds) + 1)) < 1e-9
            );

    [Fact]
    public void Only_the_two_nearest_times_count()
    {
        var table = new ReciprocityTable(new(1, 0), new(10, 0), new(1000, 2));

        Assert.Equal(1, table.CorrectionAt(100) ?? double.NaN, 9);
        Assert.Equal(0, table.CorrectionAt(5));
    }

    [Fact]
    public void A_table_of_one_time_knows_that_time()
    {
        var table = new ReciprocityTable(new ReciprocityPoint(1, 0.5));

        Assert.Equal(0.5, table.CorrectionAt(1));
        Assert.Single(table.Points);
    }

    [Theory]
    [InlineData("10s:1", 10, 1)]
    [InlineData("1s:1/3", 1, 1 / 3.0)]
    [InlineData(" 2min : 2.5 ", 120, 2.5)]
    [InlineData("1/5s:0", 0.2, 0)]
    // F14 M: Eastman Kodak F-4017, from memory, as corrected times: at 2 s it has what 1 s would give.
    [InlineData("1s:2s", 2, 1)]
    [InlineData("100s:400s", 400, 2)]
    public void A_line_of_the_table_is_a_time_and_its_stops(string text, double seconds, double stops) =>
        Assert.Equal(new ReciprocityPoint(seconds, stops), ReciprocityPoint.Parse(text).Value);

    [Theory]
    [InlineData("10s", ReciprocityFault.NotTwoParts)]
    [InlineData("10s:1:2", ReciprocityFault.NotTwoParts)]
    [InlineData("10:1", ReciprocityFault.NoTime)]
    [InlineData("0s:1", ReciprocityFault.TimeOfNothing)]
    [InlineData("10s:much", ReciprocityFault.NoStops)]
    [InlineData("10s:-1", ReciprocityFault.LessLight)]
    [InlineData("10s:5s", ReciprocityFault.ShorterTime)]
    public void A_wrong_line_is_a_slip_of_its_kind(string text, ReciprocityFault fault) =>
        Assert.Equal(fault, ReciprocityPoint.Parse(text).Fault);

    [Fact]
    public void A_table_has_rising_times_and_no_gains()
    {
        Assert.Throws<ArgumentException>(() => new ReciprocityTable());
        Assert.Throws<ArgumentException>(() => new ReciprocityTable(new ReciprocityPoint(1, 0), new ReciprocityPoint(1, 1)));
        Assert.Throws<ArgumentException>(() => new ReciprocityTable(new ReciprocityPoint(2, 0), new ReciprocityPoint(1, 1)));
        Assert.Throws<ArgumentException>(() => new ReciprocityTable(new ReciprocityPoint(0, 0)));
        Assert.Throws<ArgumentException>(() => new ReciprocityTable(new ReciprocityPoint(1, -1)));
        Assert.Throws<ArgumentException>(() => new ReciprocityTable(new ReciprocityPoint(1, 0), new ReciprocityPoint(2, -1)));
    }

    // F14 M: Eastman Kodak F-4017, from memory.
    [Theory]
    [InlineData(1, 2)]
    [InlineData(10, 50)]
    [InlineData(100, 1200)]
    public void Corrected_times_come_back_as_the_maker_prints_them(double metered, double held)
    {
        var table = new ReciprocityTable(new(2, 1), new(50, Math.Log2(5)), new(1200, Math.Log2(12)));

        Assert.Equal(held, table.HeldFor(metered) ?? double.NaN, 6);
        Assert.Null(table.HeldFor(metered / 1000));
        Assert.Null(table.HeldFor(metered * 1000));
    }

    [Fact]
    public void A_longer_time_makes_up_for_what_it_loses_itself()
    {
        var law = new ReciprocityLaw(1.3);

        Gen.Double[1.001, 1000]
            .Sample(metered =>
                law.HeldFor(metered) is { } held && Math.Abs(Math.Log2(held / metered) - law.CorrectionAt(held)!.Value) < 1e-9
            );
        Gen.Double[1.001, 10]
            .Sample(metered =>
                _panchromatic.HeldFor(metered) is not { } held
                || Math.Abs(Math.Log2(held / metered) - _panchromatic.CorrectionAt(held)!.Value) < 1e-9
            );
    }

    // The form t^p with p of 1.3 or so is how makers of black-and-white film print it, from memory; 10^1.3 is computed.
    [Theory]
    [InlineData(1.3, 10, 19.9526)]
    [InlineData(1.3, 1, 1)]
    [InlineData(1.3, 0.5, 0.5)]
    [InlineData(1, 100, 100)]
    public void An_exponent_lengthens_what_is_longer_than_a_second(double exponent, double metered, double held) =>
        Assert.Equal(held, new ReciprocityLaw(exponent).HeldFor(metered) ?? double.NaN, 0.0001);

    [Fact]
    public void An_exponent_below_one_is_none() => Assert.Throws<ArgumentOutOfRangeException>(() => new ReciprocityLaw(0.9));

    [Fact]
    public void Beyond_its_end_a_table_says_the_least()
    {
        Assert.Equal(3, _panchromatic.LeastAt(1000));
        Assert.Equal(0, _panchromatic.LeastAt(0.01));
        Assert.Equal(2, _panchromatic.LeastAt(10));
        Assert.True(_panchromatic.EndsBefore(100.1));
        Assert.False(_panchromatic.EndsBefore(100));
    }
}
