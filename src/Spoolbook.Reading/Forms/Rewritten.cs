using System.Globalization;
using System.Text.RegularExpressions;
using Spoolbook.Film;

namespace Spoolbook.Reading.Forms;

/// <summary>
/// A value as it was probably meant, written right: <c>31:12</c> as <c>31+12</c>. The likeliest comes first. A guess may be
/// wrong; the form offers only what it can read itself.
/// </summary>
static partial class Rewritten
{
    const int LongestText = 40;
    const int SecondsInAMinute = 60;

    public static IEnumerable<string> Length(string text, Gauge gauge) => Short(text, written => LengthsOf(written, gauge));

    /// <summary>A length that people count in frames: a bare number means frames.</summary>
    public static IEnumerable<string> Frames(string text, Gauge gauge) =>
        Short(text, written => (IsWhole(written) ? (string[])[written + "fr"] : []).Concat(LengthsOf(written, gauge)));

    public static IEnumerable<string> Distance(string text) => Short(text, written => FeetAndInches().Match(written)
                is { Success: true } pair
                ? [$"{pair.Groups[1].Value}ft {pair.Groups[2].Value}in"]
            : FeetAndPart().Match(written) is { Success: true } part ? [DecimalFeet(part)]
            : IsNumber(written) ? [written + "ft", written + "m"]
            : written.StartsWith("inf", StringComparison.OrdinalIgnoreCase) ? ["inf"]
            : NumberAndWord().Match(written) is { Success: true } one ? [Point(one.Groups[1].Value) + DistanceUnit(one.Groups[2].Value)]
            : [Point(written)]);

    public static IEnumerable<string> Speed(string text) =>
        Short(text, written => LeadingNumber().Match(written) is { Success: true } number ? [Point(number.Value)] : []);

    public static IEnumerable<string> Number(string text) => Short(text, written => [Point(written)]);

    public static IEnumerable<string> Duration(string text) => Short(text, written => OnAClock().Match(written) is { Success: true } clock
                ? [SecondsOf(clock) + "s"]
            : MinutesAndSeconds().Match(written) is { Success: true } both ? [SecondsOf(both) + "s"]
            : NumberAndWord().Match(written) is { Success: true } one ? [Point(one.Groups[1].Value) + TimeUnit(one.Groups[2].Value)]
            : [Point(written)]);

    public static IEnumerable<string> Clock(string text) =>
        Short(text, written => LastOf(written, TimeInDay()) is { } time && TimeOf(time) is { } clock ? [clock] : []);

    public static IEnumerable<string> Date(string text) => Short(text, DaysOf);

    public static IEnumerable<string> DateAndTime(string text) =>
        Short(text, written =>
            TimeAfterDay().Match(written) is { Success: true } time && TimeOf(time) is { } clock
                ? DaysOf(written[..time.Index].TrimEnd(' ', ',', 'T')).Select(day => $"{day} {clock}")
                : []
        );

    static IEnumerable<string> Short(string text, Func<string, IEnumerable<string>> guesses) =>
        text.Length > LongestText ? [] : guesses(text.Trim());

    static IEnumerable<string> LengthsOf(string written, Gauge gauge)
    {
        if (OnAClock().Match(written) is { Success: true } clock)
        {
            if (!clock.Groups[3].Success)
            {
                yield return FeetAndFrames(clock.Groups[1].Value, clock.Groups[2].Value, gauge);
            }

            yield return SecondsOf(clock) + "s";
        }
        else if (MinutesAndSeconds().Match(written) is { Success: true } both)
        {
            yield return SecondsOf(both) + "s";
        }
        else if (TwoNumbers().Match(written) is { Success: true } pair)
        {
            yield return FeetAndFrames(pair.Groups[1].Value, pair.Groups[2].Value, gauge);
        }
        else if (FeetAndPart().Match(written) is { Success: true } part)
        {
            yield return DecimalFeet(part);
        }
        else if (IsWhole(written))
        {
            yield return written + "ft";
            yield return written + "+00";
        }
        else if (written.EndsWith('+'))
        {
            yield return written + "00";
        }
        else if (written.StartsWith('+'))
        {
            yield return "0" + written;
        }
        else
        {
            var read = Digits(Point(written));
            yield return IsNumber(read) ? read + "ft" : read;
            if (NumberAndWord().Match(read) is { Success: true } one)
            {
                yield return one.Groups[1].Value + FilmUnit(one.Groups[2].Value);
            }
        }
    }

    static string FeetAndFrames(string feet, string frames, Gauge gauge)
    {
        var (whole, over) = (long.Parse(feet, CultureInfo.InvariantCulture), long.Parse(frames, CultureInfo.InvariantCulture));
        var perFoot = gauge.FramesPerFoot;
        if (perFoot.IsWhole && over >= (long)perFoot.Numerator)
        {
            (whole, over) = (whole + (over / (long)perFoot.Numerator), over % (long)perFoot.Numerator);
        }

        return string.Create(CultureInfo.InvariantCulture, $"{whole}+{over:00}");
    }

    static string DecimalFeet(Match match)
    {
        var figures = match.Groups.Values.Skip(1).Select(g => long.Parse(g.Value, CultureInfo.InvariantCulture)).ToArray();
        return (figures[0] + new Ratio(figures[1], figures[2])).ToShortText(3) + "ft";
    }

    static string SecondsOf(Match match)
    {
        var seconds = match
            .Groups.Values.Skip(1)
            .Where(g => g.Success)
            .Aggregate(0L, (sum, g) => (sum * SecondsInAMinute) + long.Parse(g.Value, CultureInfo.InvariantCulture));
        return seconds.ToString(CultureInfo.InvariantCulture);
    }

    static IEnumerable<string> DaysOf(string written)
    {
        if (YearFirst().Match(written) is { Success: true } iso)
        {
            yield return Day(iso.Groups[1].Value, iso.Groups[2].Value, iso.Groups[3].Value);
        }
        else if (YearLast().Match(written) is { Success: true } last)
        {
            var (one, other, year) = (last.Groups[1].Value, last.Groups[3].Value, last.Groups[4].Value);
            yield return Day(year, other, one);
            if (last.Groups[2].Value == "/")
            {
                yield return Day(year, one, other);
            }
        }
        else if (
            DateOnly.TryParseExact(
                written.Replace(",", "", StringComparison.Ordinal),
                ["d MMM yyyy", "d MMMM yyyy", "MMM d yyyy", "MMMM d yyyy", "yyyyMMdd"],
                CultureInfo.InvariantCulture,
                DateTimeStyles.None,
                out var day
            )
        )
        {
            yield return day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        }
    }

    static string Day(string year, string month, string day) =>
        $"{(year.Length == 2 ? "20" + year : year)}-{month.PadLeft(2, '0')}-{day.PadLeft(2, '0')}";

    // Null past 24 o'clock.
    static string? TimeOf(Match match)
    {
        var (hour, minute) = (int.Parse(match.Groups["h"].Value, CultureInfo.InvariantCulture), match.Groups["m"].Value);
        var half = match.Groups["half"].Value.ToUpperInvariant();
        hour =
            half.StartsWith('P') && hour < 12 ? hour + 12
            : half.StartsWith('A') && hour == 12 ? 0
            : hour;
        return hour > 24 ? null : string.Create(CultureInfo.InvariantCulture, $"{hour % 24:00}:{(minute.Length == 0 ? "00" : minute)}");
    }

    static Match? LastOf(string text, Regex form) => form.Match(text) is { Success: true } match ? match : null;

    static string Point(string number) => number.Replace(',', '.');

    // A letter typed for a figure: o for 0, l or i for 1.
    static string Digits(string text) => MistypedDigit().Replace(text, m => m.Value is "o" or "O" ? "0" : "1");

    static string FilmUnit(string unit) =>
        unit.ToUpperInvariant() switch
        {
            "'" or "F" or "FT." or "FEETS" or "FT" or "FEET" => "ft",
            "FRS" or "FRM" or "FRAMES" or "FR." => "fr",
            "MIN" => "min",
            _ => unit,
        };

    static string DistanceUnit(string unit) =>
        unit.ToUpperInvariant() switch
        {
            "'" or "FT" or "FT." or "FEET" => "ft",
            "\"" or "INCH" or "INCHES" or "IN" or "IN." => "in",
            "METRES" or "METERS" or "METRE" or "METER" or "M" or "M." => "m",
            "CM" or "CM." => "cm",
            "MM" => "mm",
            _ => unit,
        };

    static string TimeUnit(string unit) =>
        unit.ToUpperInvariant() switch
        {
            "'" or "M" or "MIN." or "MINS" or "MINUTE" or "MINUTES" or "MIN" => "min",
            "H." or "HR" or "HRS" or "HOUR" or "HOURS" or "H" => "h",
            _ => "s",
        };

    static bool IsWhole(string text) => text.Length > 0 && text.All(char.IsAsciiDigit);

    static bool IsNumber(string text) => PlainNumber().IsMatch(text);

    [GeneratedRegex(@"^[0-9]+(\.[0-9]+)?$")]
    private static partial Regex PlainNumber();

    [GeneratedRegex(@"^[0-9]+([.,][0-9]+)?")]
    private static partial Regex LeadingNumber();

    [GeneratedRegex(@"^([0-9]+(?:[.,][0-9]+)?)\s*([A-Za-z'""]+\.?)$")]
    private static partial Regex NumberAndWord();

    [GeneratedRegex(@"^([0-9]{1,6}):([0-9]{1,2})(?::([0-9]{1,2}))?$")]
    private static partial Regex OnAClock();

    [GeneratedRegex(@"^([0-9]{1,4})\s*(?:m|min|')\s*([0-9]{1,2})\s*(?:s|sec|"")?$")]
    private static partial Regex MinutesAndSeconds();

    // Something must separate the two.
    [GeneratedRegex(@"^([0-9]{1,6})\s*(?:ft|feet|foot|f|'|’|[-/;+_]|\s)+\s*([0-9]{1,4})\s*(?:fr|frs|frames?|f|"")?\.?$")]
    private static partial Regex TwoNumbers();

    [GeneratedRegex(@"^([0-9]{1,4})\s*(?:ft|feet|foot|')\s*([0-9]{1,2})\s*(?:in|inch|inches|"")?\.?$")]
    private static partial Regex FeetAndInches();

    [GeneratedRegex(@"^([0-9]{1,6})\s+([1357])/([248])\s*(?:ft|feet|foot|')?\.?$")]
    private static partial Regex FeetAndPart();

    [GeneratedRegex(@"^([0-9]{4})[-./]([0-9]{1,2})[-./]([0-9]{1,2})(?:[ T].*)?$")]
    private static partial Regex YearFirst();

    [GeneratedRegex(@"^([0-9]{1,2})\s*([-./])\s*([0-9]{1,2})\s*[-./]\s*([0-9]{4}|[0-9]{2})(?:[ T].*)?$")]
    private static partial Regex YearLast();

    [GeneratedRegex(@"(?<=[ T,])(?<h>[0-9]{1,2})[:.h](?<m>[0-5][0-9])(?::[0-9]{2})?\s*(?<half>[AaPp]\.?[Mm]\.?)?\s*Z?$")]
    private static partial Regex TimeAfterDay();

    [GeneratedRegex(
        @"(?<![0-9:.])(?<h>[0-9]{1,2})[:.h]?(?<m>[0-5][0-9])(?::[0-9]{2})?\s*(?<half>[AaPp]\.?[Mm]\.?)?$"
            + @"|^(?<h>[0-9]{1,2})\s*(?<half>[AaPp]\.?[Mm]\.?)$"
    )]
    private static partial Regex TimeInDay();

    [GeneratedRegex("(?<=[0-9+])[oOlI]|[oOlI](?=[0-9+])")]
    private static partial Regex MistypedDigit();
}
