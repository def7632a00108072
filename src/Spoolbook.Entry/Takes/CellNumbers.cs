using System.Globalization;
using System.Text.RegularExpressions;
using Spoolbook.Film;

namespace Spoolbook.Entry.Takes;

/// <summary>Numbers as spreadsheets show them in several languages.</summary>
static partial class CellNumbers
{
    /// <summary>
    /// A number with a decimal point or comma, with or without thousands separators; null where the text is none or reads
    /// two ways.
    /// </summary>
    public static Ratio? Decimal(string text)
    {
        var plain = text.Replace("\u00A0", "", StringComparison.Ordinal).Replace("\u202F", "", StringComparison.Ordinal).Trim();
        var match = Number().Match(plain);
        if (!match.Success)
        {
            return null;
        }

        var whole = string.Concat(match.Groups["whole"].Value.Where(char.IsAsciiDigit));
        return decimal.TryParse(
            $"{whole}.{match.Groups["part"].Value}0",
            NumberStyles.AllowDecimalPoint,
            CultureInfo.InvariantCulture,
            out var number
        )
            ? Ratio.FromDecimal(number)
            : null;
    }

    // 9.5, 9,50 and 1,234.50; not 1,234, which depends on the country.
    [GeneratedRegex(
        @"^(?<whole>[0-9]{1,3}(,[0-9]{3})+)\.(?<part>[0-9]{1,9})$|^(?<whole>[0-9]{1,3}(\.[0-9]{3})+),(?<part>[0-9]{1,9})$"
            + @"|^(?<whole>[0-9]{1,9})$|^(?<whole>[0-9]{1,9})\.(?<part>[0-9]{1,9})$|^(?<whole>[0-9]{1,9}),(?<part>[0-9]{1,2}|[0-9]{4,9})$"
            + @"|^(?<whole>0),(?<part>[0-9]{3})$",
        RegexOptions.ExplicitCapture
    )]
    private static partial Regex Number();
}
