using System.Globalization;

namespace Spoolbook;

/// <summary>The date that papers are made on.</summary>
/// <param name="Refused">What is wrong with the date that was asked for; null where nothing is.</param>
internal readonly record struct MakingDate(DateTimeOffset Date, string? Refused)
{
    // The year 9999 is the last that a date can have, and a time zone may push it over.
    static readonly long _end = new DateTimeOffset(9999, 1, 1, 0, 0, 0, TimeSpan.Zero).ToUnixTimeSeconds();

    /// <summary>The date of a variable SOURCE_DATE_EPOCH, or today where it is not set.</summary>
    public static MakingDate Of(string? epoch, DateTimeOffset now)
    {
        // https://reproducible-builds.org/specs/source-date-epoch/ : seconds since 1970 in place of the clock.
        if (string.IsNullOrEmpty(epoch))
        {
            return new(DayOf(now), null);
        }

        return long.TryParse(epoch, NumberStyles.None, CultureInfo.InvariantCulture, out var seconds) && seconds < _end
            ? new(DateTimeOffset.FromUnixTimeSeconds(seconds), null)
            : new(
                DayOf(now),
                $"SOURCE_DATE_EPOCH is '{epoch}', which is no date. Write whole seconds since 1970, before the year 9999, such as "
                    + "1790000000 (21 September 2026); or take the variable away, and papers carry today's date."
            );
    }

    // Papers say the day on which they were made: two runs on one day that found the same are the same files.
    static DateTimeOffset DayOf(DateTimeOffset moment) => new(moment.Date, moment.Offset);
}
