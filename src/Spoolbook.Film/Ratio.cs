using System.Globalization;
using System.Numerics;

namespace Spoolbook.Film;

/// <summary>
/// An exact fraction in lowest terms, for lengths, times and speeds that the trade counts exactly
/// (64/3 frames a foot, 24000/1001 frames a second). <c>default</c> is zero.
/// </summary>
public readonly record struct Ratio : IComparable<Ratio>
{
    readonly BigInteger _numerator;

    // Stored less one, so that zero bits mean 0/1.
    readonly BigInteger _denominatorLessOne;

    /// <summary>The fraction <paramref name="numerator"/> / <paramref name="denominator"/>, reduced, its sign above the line.</summary>
    /// <exception cref="DivideByZeroException">The denominator is zero.</exception>
    public Ratio(BigInteger numerator, BigInteger denominator)
    {
        if (denominator.IsZero)
        {
            throw new DivideByZeroException("A ratio cannot have a denominator of zero.");
        }

        var divisor = BigInteger.GreatestCommonDivisor(numerator, denominator);
        if (denominator.Sign < 0)
        {
            divisor = -divisor;
        }

        _numerator = numerator / divisor;
        _denominatorLessOne = (denominator / divisor) - 1;
    }

    /// <summary>The number above the line; carries the sign.</summary>
    public BigInteger Numerator => _numerator;

    /// <summary>The number below the line; at least 1.</summary>
    public BigInteger Denominator => _denominatorLessOne + 1;

    /// <summary>Zero.</summary>
    public static Ratio Zero => default;

    /// <summary>One.</summary>
    public static Ratio One => new(1, 1);

    /// <summary>Whether it is a whole number.</summary>
    public bool IsWhole => _denominatorLessOne.IsZero;

    /// <summary>-1, 0 or 1.</summary>
    public int Sign => _numerator.Sign;

    /// <summary>A whole number as a ratio.</summary>
    public static implicit operator Ratio(long whole) => new(whole, 1);

    /// <summary>A decimal number as an exact ratio: 23.976 is 2997/125.</summary>
    public static Ratio FromDecimal(decimal value)
    {
        var bits = decimal.GetBits(value);
        var digits = new decimal(bits[0], bits[1], bits[2], decimal.IsNegative(value), scale: 0);
        return new Ratio(new BigInteger(digits), BigInteger.Pow(10, value.Scale));
    }

    /// <summary>The sum.</summary>
    public static Ratio operator +(Ratio a, Ratio b) =>
        new((a.Numerator * b.Denominator) + (b.Numerator * a.Denominator), a.Denominator * b.Denominator);

    /// <summary>The difference.</summary>
    public static Ratio operator -(Ratio a, Ratio b) => a + -b;

    /// <summary>The negative.</summary>
    public static Ratio operator -(Ratio a) => new(-a.Numerator, a.Denominator);

    /// <summary>The product.</summary>
    public static Ratio operator *(Ratio a, Ratio b) => new(a.Numerator * b.Numerator, a.Denominator * b.Denominator);

    /// <summary>The quotient.</summary>
    /// <exception cref="DivideByZeroException"><paramref name="b"/> is zero.</exception>
    public static Ratio operator /(Ratio a, Ratio b) => new(a.Numerator * b.Denominator, a.Denominator * b.Numerator);

    /// <summary>Whether <paramref name="a"/> is less.</summary>
    public static bool operator <(Ratio a, Ratio b) => a.CompareTo(b) < 0;

    /// <summary>Whether <paramref name="a"/> is more.</summary>
    public static bool operator >(Ratio a, Ratio b) => a.CompareTo(b) > 0;

    /// <summary>Whether <paramref name="a"/> is less or equal.</summary>
    public static bool operator <=(Ratio a, Ratio b) => a.CompareTo(b) <= 0;

    /// <summary>Whether <paramref name="a"/> is more or equal.</summary>
    public static bool operator >=(Ratio a, Ratio b) => a.CompareTo(b) >= 0;

    /// <inheritdoc/>
    public int CompareTo(Ratio other) => (Numerator * other.Denominator).CompareTo(other.Numerator * Denominator);

    /// <summary>The largest whole number that is at most this.</summary>
    public BigInteger Floor()
    {
        var quotient = BigInteger.DivRem(Numerator, Denominator, out var rest);
        return rest.Sign < 0 ? quotient - 1 : quotient;
    }

    /// <summary>The smallest whole number that is at least this.</summary>
    public BigInteger Ceiling() => -(-this).Floor();

    /// <summary>The nearest whole number; a half goes up, as the trade rounds frames.</summary>
    public BigInteger Round() => (this + new Ratio(1, 2)).Floor();

    /// <summary>The nearest floating-point number, for drawing and logarithms only. Never keep books with it.</summary>
    public double ToDouble() => Math.Abs(Sign) * ((double)Numerator / (double)Denominator);

    /// <summary>The number rounded to <paramref name="places"/> decimals (a half away from zero), written with a point.</summary>
    public string ToText(int places)
    {
        var scale = BigInteger.Pow(10, places);
        var magnitude = (Sign < 0 ? -this : this) * new Ratio(scale, 1);
        var digits = magnitude.Round().ToString(CultureInfo.InvariantCulture).PadLeft(places + 1, '0');
        var text = places == 0 ? digits : digits[..^places] + "." + digits[^places..];
        var roundsToNothing = text.All(c => c is '0' or '.');
        return Sign < 0 && !roundsToNothing ? "-" + text : text;
    }

    /// <summary>As <see cref="ToText"/>, without trailing zeros: <c>12.5</c>, <c>24</c>.</summary>
    public string ToShortText(int places)
    {
        var text = ToText(places);
        return places == 0 ? text : text.TrimEnd('0').TrimEnd('.');
    }

    /// <summary>The fraction as <c>64/3</c>, or the whole number alone.</summary>
    public override string ToString() =>
        IsWhole
            ? Numerator.ToString(CultureInfo.InvariantCulture)
            : string.Create(CultureInfo.InvariantCulture, $"{Numerator}/{Denominator}");
}
