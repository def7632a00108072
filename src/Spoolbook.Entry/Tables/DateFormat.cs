namespace Spoolbook.Entry.Tables;

/// <summary>Whether a number format shows a number as a date.</summary>
static class DateFormat
{
    /// <summary>
    /// The built-in formats: 14 to 17 and 22 are dates (ISO/IEC 29500-1, 18.8.30), and in East Asian versions 27 to 36
    /// and 50 to 58.
    /// </summary>
    public static bool IsBuiltIn(int id) => id is (>= 14 and <= 17) or 22 or (>= 27 and <= 31) or 36 or (>= 50 and <= 58);

    /// <summary>A format by its code: days or years make it a date; hours and minutes alone, a time.</summary>
    public static bool Is(string code)
    {
        var (inQuotes, inBrackets) = (false, false);
        for (var i = 0; i < code.Length; i++)
        {
            switch (code[i])
            {
                case '"':
                    inQuotes = !inQuotes;
                    break;
                case '\\' or '_' or '*' when !inQuotes:
                    i++;
                    break;
                case '[' or ']' when !inQuotes:
                    inBrackets = code[i] == '[';
                    break;
                case 'd' or 'D' or 'y' or 'Y' when !inQuotes && !inBrackets:
                    return true;
                case 'm' or 'M' when !inQuotes && !inBrackets && !code.AsSpan().ContainsAny("hHsS"):
                    return true;
            }
        }

        return false;
    }
}
