using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Walks;

/// <summary>
/// The shooting day of an entry. Without a date it is that of the entry before. Hours before six after a later hour are
/// the same day's night, although the calendar has the next day, and so are hours within three of one of that night. A
/// <c>day:</c> on the entry overrides both.
/// </summary>
static class DayRule
{
    static readonly TimeOnly NightEnds = new(6, 0);

    // A crew that was sent home sleeps longer than that (common practice).
    static readonly TimeSpan NoRest = TimeSpan.FromHours(3);

    /// <summary>The shooting day of a log entry, and its calendar time where an hour was written.</summary>
    /// <param name="day">The shooting day of the entry before it.</param>
    /// <param name="latest">The latest hour known of that day; null for none.</param>
    public static (DateOnly Day, DateTime? When) Of(LogEntry entry, DateOnly day, DateTime? latest)
    {
        if (entry is Reload { On: { } threaded })
        {
            return Of(threaded.Value, entry.Day?.Value, day, latest);
        }

        var date = (entry as Take)?.On?.Value;
        var on = entry.Day?.Value ?? date ?? day;
        return entry.At is not { Value: var at } ? (on, null)
            : entry.Day is not null && date is { } written ? (on, written.ToDateTime(at))
            : (on, on.AddDays(on == day && IsNight(at, day, latest) ? 1 : 0).ToDateTime(at));
    }

    /// <summary>The shooting day of a reload or an unload, which have a date and a time of their own.</summary>
    /// <param name="said">The shooting day written beside it.</param>
    public static (DateOnly Day, DateTime? When) Of(DateTime when, DateOnly? said, DateOnly day, DateTime? latest)
    {
        var (date, at) = (DateOnly.FromDateTime(when), TimeOnly.FromDateTime(when));

        // Without a known hour of the day before, its film was still shot before this night.
        var isNight = date == day.AddDays(1) && IsNight(at, day, latest ?? DateTime.MaxValue);
        return (said ?? (isNight ? day : date), when);
    }

    static bool IsNight(TimeOnly at, DateOnly day, DateTime? latest) =>
        (at < NightEnds && latest > day.ToDateTime(at)) || (latest is { } known && GoesOn(at, day, known));

    // Sunrise ends no shooting day: 05:50, 06:20.
    static bool GoesOn(TimeOnly at, DateOnly day, DateTime latest)
    {
        var morning = DateOnly.FromDateTime(latest);
        return morning.DayNumber == day.DayNumber + 1 && (morning.ToDateTime(at) - latest).Duration() <= NoRest;
    }
}
