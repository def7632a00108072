using System.Text.RegularExpressions;

namespace Spoolbook.Film;

/// <summary>The ways to write a length.</summary>
static partial class FilmLengthForm
{
    // Fifteen digits hold any real length, and stop a slip of the key from turning into a huge computation.
    const int LongestNumber = 15;
    static readonly Ratio _longest = 100_000_000;

    public static Parsed<FilmLength, FilmLengthFault> Read(string text)
    {
        var written = text.Trim();
        if (FaultOf(written) is { } fault)
        {
            return Failed(fault, text);
        }

        var length = FeetAndFrames().Match(written) is { Success: true } pair
            ? FilmLength.OfFeetAndFrames(Whole(pair, "feet"), Whole(pair, "frames"))
            : Single(OneUnit().Match(written));
        return length is { } value ? value : Failed(FilmLengthFault.UnknownUnit, text);
    }

    static Parsed<FilmLength, FilmLengthFault> Failed(FilmLengthFault fault, string text) => new(fault, text);

    // The order matters: the first fault found is the one the writer can cure.
    static FilmLengthFault? FaultOf(string written) =>
        written switch
        {
            "" => FilmLengthFault.Empty,
            _ when written.StartsWith('-') => FilmLengthFault.Negative,
            _ when CommaBetweenDigits().IsMatch(written) => FilmLengthFault.DecimalComma,
            _ when ClockTime().IsMatch(written) => FilmLengthFault.Clock,
            _ when InMinutes().IsMatch(written) => FilmLengthFault.Minutes,
            _ when NumberAlone().IsMatch(written) => FilmLengthFault.NoUnit,
            _ when FeetAlone().IsMatch(written) => FilmLengthFault.NoFrames,
            _ when FramesAlone().IsMatch(written) => FilmLengthFault.NoFeet,
            _ when DecimalFrames().IsMatch(written) => FilmLengthFault.PartOfAFrame,
            _ when DecimalFeetThenFrames().IsMatch(written) => FilmLengthFault.PartOfAFoot,
            _ when !FeetAndFrames().IsMatch(written) && !OneUnit().IsMatch(written) => FilmLengthFault.NotALength,
            _ when IsTooLong(written) => FilmLengthFault.TooLong,
            _ => null,
        };

    static bool IsTooLong(string written) =>
        Numbers().Matches(written).Any(number => number.Length > LongestNumber || DecimalText.Read(number.Value) >= _longest);

    static long Whole(Match match, string group) => (long)DecimalText.Read(match.Groups[group].Value).Numerator;

    static FilmLength? Single(Match match)
    {
        var number = DecimalText.Read(match.Groups["number"].Value);
        return match.Groups["unit"].Value switch
        {
            "ft" or "foot" or "feet" => FilmLength.OfFeet(number),
            "fr" or "frame" or "frames" => FilmLength.OfFrames((long)number.Numerator),
            "m" or "metre" or "metres" or "meter" or "meters" => FilmLength.OfMetres(number),
            "s" or "sec" or "second" or "seconds" => FilmLength.OfSeconds(number),
            _ => null,
        };
    }

    [GeneratedRegex(
        @"^(?<feet>[0-9]+)(\s*\+\s*(?<frames>[0-9]+)|\s*(ft|feet|foot)\s*(?<frames>[0-9]+)\s*(fr|frames?))$",
        RegexOptions.ExplicitCapture
    )]
    private static partial Regex FeetAndFrames();

    [GeneratedRegex(@"^(?<number>[0-9]+(\.[0-9]+)?)\s*(?<unit>[A-Za-z'""]+)$", RegexOptions.ExplicitCapture)]
    private static partial Regex OneUnit();

    [GeneratedRegex(@"[0-9]\s*,\s*[0-9]")]
    private static partial Regex CommaBetweenDigits();

    [GeneratedRegex(@"^[0-9]+:[0-9.:]+$")]
    private static partial Regex ClockTime();

    [GeneratedRegex(@"^[0-9.]+\s*(min|minutes?|m\s*[0-9.]+\s*s?)$", RegexOptions.ExplicitCapture)]
    private static partial Regex InMinutes();

    [GeneratedRegex(@"^[0-9]+(\.[0-9]+)?$", RegexOptions.ExplicitCapture)]
    private static partial Regex NumberAlone();

    [GeneratedRegex(@"^[0-9.]+\s*\+$")]
    private static partial Regex FeetAlone();

    [GeneratedRegex(@"^\+\s*[0-9.]+$")]
    private static partial Regex FramesAlone();

    [GeneratedRegex(@"(^|\+\s*|(ft|feet|foot)\s*)[0-9]+\.[0-9]+\s*(fr|frames?)$|\+\s*[0-9]+\.[0-9]+$", RegexOptions.ExplicitCapture)]
    private static partial Regex DecimalFrames();

    [GeneratedRegex(@"^[0-9]+\.[0-9]+\s*(\+|(ft|feet|foot)\s*[0-9])", RegexOptions.ExplicitCapture)]
    private static partial Regex DecimalFeetThenFrames();

    [GeneratedRegex(@"[0-9]+(\.[0-9]+)?", RegexOptions.ExplicitCapture)]
    private static partial Regex Numbers();
}
