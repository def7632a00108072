using System.Globalization;
using System.Numerics;

namespace Spoolbook.Film;

/// <summary>Decimal digits, read exactly.</summary>
static class DecimalText
{
    /// <summary>The exact ratio of <c>23.976</c>: digits, and at most one point with digits on both sides.</summary>
    public static Ratio Read(string digits)
    {
        var point = digits.IndexOf('.', StringComparison.Ordinal);
        var decimals = point < 0 ? 0 : digits.Length - point - 1;
        var whole = BigInteger.Parse(digits.Replace(".", "", StringComparison.Ordinal), NumberStyles.None, CultureInfo.InvariantCulture);
        return new Ratio(whole, BigInteger.Pow(10, decimals));
    }

    /// <summary>Reads digits with at most one point among them; false for anything else and for too many digits.</summary>
    public static bool TryRead(string text, int mostDigits, out Ratio value)
    {
        var point = text.IndexOf('.', StringComparison.Ordinal);
        var digits = text.Count(char.IsAsciiDigit);
        var isNumber =
            digits > 0 && digits <= mostDigits && digits == text.Length - (point < 0 ? 0 : 1) && point != 0 && point != text.Length - 1;
        value = isNumber ? Read(text) : Ratio.Zero;
        return isNumber;
    }
}
