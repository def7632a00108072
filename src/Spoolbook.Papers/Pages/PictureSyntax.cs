using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Spoolbook.Papers.Pages;

/// <summary>The values of SVG attributes: numbers, lists of them, colours. A value that cannot be read is null.</summary>
static partial class PictureSyntax
{
    public static double? Number(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && Math.Abs(value) < 1e6 ? value : null;

    public static ImmutableArray<double>? Numbers(string text)
    {
        var numbers = ImmutableArray.CreateBuilder<double>();
        foreach (var part in text.Split([' ', ',', '\n', '\t'], StringSplitOptions.RemoveEmptyEntries))
        {
            if (Number(part) is not { } value)
            {
                return null;
            }

            numbers.Add(value);
        }
        return numbers.ToImmutable();
    }

    /// <summary>Whether a text is a list of numbers.</summary>
    public static bool AreNumbers(ReadOnlySpan<char> text)
    {
        foreach (var part in text.SplitAny(' ', ',', '\n', '\t'))
        {
            if (!text[part].IsEmpty && !IsNumber(text[part]))
            {
                return false;
            }
        }

        return true;
    }

    public static bool IsNumber(ReadOnlySpan<char> text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && Math.Abs(value) < 1e6;

    /// <summary>#rgb, #rrggbb, black, white or currentColor as 0xRRGGBB.</summary>
    public static int? Colour(string text)
    {
        if (text is "black" or "currentColor")
        {
            return 0x111111;
        }

        if (text == "white")
        {
            return 0xFFFFFF;
        }

        if (text.Length is not (4 or 7) || text[0] != '#')
        {
            return null;
        }

        if (!int.TryParse(text.AsSpan(1), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var value))
        {
            return null;
        }

        if (text.Length == 7)
        {
            return value;
        }

        int red = value >> 8 & 15,
            green = value >> 4 & 15,
            blue = value & 15;
        return red * 17 << 16 | green * 17 << 8 | blue * 17;
    }

    /// <summary>translate(x y), scale(n), or both in this order: scales a point, then moves it.</summary>
    public static (double X, double Y, double Scale)? Transform(string text)
    {
        double x = 0,
            y = 0,
            scale = 1;
        var read = 0;
        foreach (Match match in TransformStep().Matches(text))
        {
            read += match.Length;
            if (Numbers(match.Groups[2].Value) is not { Length: > 0 } values)
            {
                return null;
            }

            if (match.Groups[1].Value == "scale")
            {
                if (values.Length > 1 && values[0] != values[1])
                {
                    return null;
                }

                scale *= values[0];
            }
            else
            {
                x += scale * values[0];
                y += scale * (values.Length > 1 ? values[1] : 0);
            }
        }
        return read == text.Length ? (x, y, scale) : null;
    }

    [GeneratedRegex(@"\s*(translate|scale)\(([^()]*)\)\s*", RegexOptions.CultureInvariant)]
    private static partial Regex TransformStep();
}
