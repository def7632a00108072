using System.Globalization;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Running;

/// <summary>The kind of figure a tolerance is, and how to write it.</summary>
/// <param name="Name">Its name in messages and the reference: <c>a length of film</c>.</param>
/// <param name="Help">How to write it.</param>
/// <param name="Pattern">The written form, as a regular expression for JSON Schema.</param>
public abstract record ToleranceKind(Sentence Name, Sentence Help, string Pattern)
{
    const int MostCounted = 999_999;
    const int MostStops = 30;
    const int MostMireds = 500;

    /// <summary>The largest bare number allowed; null where a number needs a unit.</summary>
    public decimal? MostNumber { get; init; }

    /// <summary>Film, in frames.</summary>
    public static ToleranceKind<Footage> Length { get; } =
        new(
            Sentence.Of("rules/bad-tolerance.value.length"),
            Sentence.Of("rules/bad-tolerance.help.length"),
            "^ *[0-9]+([.][0-9]+)? *([+] *[0-9]+|(ft|feet|foot)( *[0-9]+ *(fr|frames?))?|(fr|frames?)|m|met(re|er)s?|s|sec|seconds?) *$",
            ALength,
            length => $"{length.Frames}fr"
        );

    /// <summary>A count of frames, takes, days or another thing that the tolerance names.</summary>
    public static ToleranceKind<long> Count { get; } =
        new(
            Sentence.Of("rules/bad-tolerance.value.count"),
            Sentence.Of("rules/bad-tolerance.help.count"),
            "^ *[0-9]{1,6} *$",
            ACount,
            count => count.ToString(CultureInfo.InvariantCulture)
        )
        {
            MostNumber = MostCounted,
        };

    /// <summary>Stops, from 0 to 30.</summary>
    public static ToleranceKind<double> Stops { get; } =
        new(
            Sentence.Of("rules/bad-tolerance.value.stops"),
            Sentence.Of("rules/bad-tolerance.help.stops"),
            "^ *([0-9]+([.][0-9]+)? +)?[0-9]+([.][0-9]+)?( */ *[0-9]+([.][0-9]+)?)? *$",
            AmountOfStops,
            WrittenStops
        )
        {
            MostNumber = MostStops,
        };

    /// <summary>Mireds, from 0 to 500.</summary>
    public static ToleranceKind<double> Mireds { get; } =
        new(
            Sentence.Of("rules/bad-tolerance.value.mireds"),
            Sentence.Of("rules/bad-tolerance.help.mireds"),
            "^ *([0-4]?[0-9]?[0-9]([.][0-9]+)?|500) *$",
            AmountOfMireds,
            mireds => mireds.ToString("0.##", CultureInfo.InvariantCulture)
        )
        {
            MostNumber = MostMireds,
        };

    /// <summary>A part of a whole, from 0 to 1.</summary>
    public static ToleranceKind<Ratio> Part { get; } =
        new(
            Sentence.Of("rules/bad-tolerance.value.part"),
            Sentence.Of("rules/bad-tolerance.help.part"),
            "^ *[0-9]+([.][0-9]+)?(/[0-9]+([.][0-9]+)?)? *%? *$",
            APart,
            part => (part * 100).ToShortText(2) + "%"
        )
        {
            MostNumber = 1,
        };

    /// <summary>A length of time, in seconds.</summary>
    public static ToleranceKind<Ratio> Time { get; } =
        new(
            Sentence.Of("rules/bad-tolerance.value.time"),
            Sentence.Of("rules/bad-tolerance.help.time"),
            "^ *[0-9]+([.][0-9]+)?(/[0-9]+([.][0-9]+)?)? *(s|min|h) *$",
            ATime,
            WrittenTime
        );

    static bool ALength(string text, Gauge gauge, out Footage value)
    {
        var read = FilmLength.Parse(text, gauge).TryGet(out var length);
        value = read ? length.In(gauge, Speed.Normal) : Footage.Zero;
        return read;
    }

    static bool ACount(string text, Gauge gauge, out long value) =>
        long.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out value) && value <= MostCounted;

    static bool AmountOfStops(string text, Gauge gauge, out double value) =>
        Film.Stops.Parse(text).TryGet(out value) && value is >= 0 and <= MostStops;

    static bool AmountOfMireds(string text, Gauge gauge, out double value) =>
        double.TryParse(text.Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value) && value <= MostMireds;

    static bool APart(string text, Gauge gauge, out Ratio value) => Measure.Part(text).TryGet(out value);

    static bool ATime(string text, Gauge gauge, out Ratio value) => Measure.Seconds(text).TryGet(out value);

    static string WrittenStops(double stops)
    {
        foreach (var parts in (int[])[1, 2, 3, 6])
        {
            var count = (long)Math.Round(stops * parts);
            if (Math.Abs((stops * parts) - count) < 1e-9)
            {
                var (whole, over) = Math.DivRem(count, parts);
                return over == 0 ? $"{whole}"
                    : whole == 0 ? $"{over}/{parts}"
                    : $"{whole} {over}/{parts}";
            }
        }

        return stops.ToString("0.##", CultureInfo.InvariantCulture);
    }

    static string WrittenTime(Ratio seconds)
    {
        var (unit, name) =
            seconds.Sign > 0 && (seconds / 3600).IsWhole ? (3600, "h")
            : seconds.Sign > 0 && (seconds / 60).IsWhole ? (60, "min")
            : (1, "s");
        return (seconds / unit).ToShortText(2) + name;
    }
}

/// <summary>A kind of tolerance, with its reader and writer.</summary>
public sealed record ToleranceKind<T>(Sentence Name, Sentence Help, string Pattern, ToleranceReader<T> Read, Func<T, string> Write)
    : ToleranceKind(Name, Help, Pattern);
