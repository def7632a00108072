using CsCheck;
using Fractions;

namespace Spoolbook.Film.Tests;

public class RatioTests
{
    static readonly Gen<(long N, long D)> _pairs = Gen.Select(Gen.Long[-1_000_000, 1_000_000], Gen.Long[-1000, 1000].Where(d => d != 0));

    // J7 H: an outside library of exact rationals.
    [Fact]
    public void Arithmetic_agrees_with_a_general_fractions_library() =>
        Gen.Select(_pairs, _pairs)
            .Sample(
                (a, b) =>
                {
                    var (x, y) = (Ours(a), Ours(b));
                    var (p, q) = (Theirs(a), Theirs(b));
                    return Same(x + y, p + q)
                        && Same(x - y, p - q)
                        && Same(x * y, p * q)
                        && Same(-x, -p)
                        && (y.Sign == 0 || Same(x / y, p / q))
                        && Math.Sign(x.CompareTo(y)) == Math.Sign(p.CompareTo(q))
                        && (x < y) == (p < q)
                        && (x > y) == (p > q)
                        && (x <= y) == (p <= q)
                        && (x >= y) == (p >= q);
                }
            );

    [Fact]
    public void Rounding_agrees_with_a_general_fractions_library() =>
        _pairs.Sample(pair =>
        {
            var (ours, theirs) = (Ours(pair), Theirs(pair));
            return ours.Floor() == (System.Numerics.BigInteger)Fraction.Round(theirs, 0, MidpointRounding.ToNegativeInfinity)
                && ours.Ceiling() == (System.Numerics.BigInteger)Fraction.Round(theirs, 0, MidpointRounding.ToPositiveInfinity)
                && Math.Abs(ours.ToDouble() - theirs.ToDouble()) <= 1e-9 * Math.Max(1, Math.Abs(theirs.ToDouble()));
        });

    [Theory]
    [InlineData(1, 2, "1")]
    [InlineData(-1, 2, "0")]
    [InlineData(3, 2, "2")]
    [InlineData(-3, 2, "-1")]
    [InlineData(1, 3, "0")]
    public void A_half_goes_up_to_the_next_whole(int above, int below, string whole) =>
        Assert.Equal(whole, new Ratio(above, below).Round().ToString(null, null));

    [Theory]
    [InlineData(1, 8, 2, "0.13", "0.13")]
    [InlineData(-1, 8, 2, "-0.13", "-0.13")]
    [InlineData(1, 2, 0, "1", "1")]
    [InlineData(25, 2, 3, "12.500", "12.5")]
    [InlineData(24, 1, 3, "24.000", "24")]
    [InlineData(-1, 1000, 2, "0.00", "0")]
    [InlineData(100, 1, 0, "100", "100")]
    [InlineData(1, 100, 2, "0.01", "0.01")]
    public void A_ratio_is_written_with_a_point(int above, int below, int places, string text, string shortText)
    {
        Assert.Equal(text, new Ratio(above, below).ToText(places));
        Assert.Equal(shortText, new Ratio(above, below).ToShortText(places));
    }

    [Fact]
    public void A_decimal_is_exactly_what_it_writes()
    {
        Assert.Equal(new Ratio(2997, 125), Ratio.FromDecimal(23.976m));
        Assert.Equal(new Ratio(-1, 2), Ratio.FromDecimal(-0.5m));
        Assert.Equal(
            decimal.MaxValue.ToString(System.Globalization.CultureInfo.InvariantCulture),
            Ratio.FromDecimal(decimal.MaxValue).ToString()
        );
    }

    [Fact]
    public void A_ratio_is_in_lowest_terms_with_its_sign_above()
    {
        Assert.Equal("-2/3", new Ratio(4, -6).ToString());
        Assert.Equal("7", new Ratio(14, 2).ToString());
        Assert.True(new Ratio(14, 2).IsWhole);
        Assert.False(new Ratio(7, 2).IsWhole);
        Assert.Equal(0, default(Ratio).Sign);
        Assert.Equal(1, default(Ratio).Denominator);
        Assert.Equal(Ratio.Zero, default);
        Assert.Equal(1, Ratio.One);
    }

    [Fact]
    public void Nothing_is_divided_by_nothing()
    {
        Assert.Throws<DivideByZeroException>(() => new Ratio(1, 0));
        Assert.Throws<DivideByZeroException>(() => Ratio.One / Ratio.Zero);
    }

    static Ratio Ours((long N, long D) pair) => new(pair.N, pair.D);

    static Fraction Theirs((long N, long D) pair) => new(pair.N, pair.D);

    static bool Same(Ratio ours, Fraction theirs) => ours.Numerator * theirs.Denominator == theirs.Numerator * ours.Denominator;
}
