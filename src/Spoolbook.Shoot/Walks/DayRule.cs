using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Walks;

/// <summary>
/// The shooting day of an entry. Without a date it is that of the entry before; the hours before six that
/// follow a later one are the night of the same day, though the calendar already says the next. A
/// <c>day:</c> on the entry has the last word.
/// </summary>
static class DayRule
{
    static readonly TimeOnly NightEnds = new(6, 0);

    /// <summary>The shooting day of an entry of the log, and its hour on the calendar where one was written.</summary>
    /// <param name="day">The shooting day of the entry before it.</param>
    /// <param name="latest">The latest hour known of that day; null where none is.</param>
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

    /// <summary>The shooting day of what has a date and a time of its own: threading again, or taking out.</summary>
    /// <param name="said">The shooting day that was written beside it.</param>
    public static (DateOnly Day, DateTime? When) Of(DateTime when, DateOnly? said, DateOnly day, DateTime? latest)
    {
        var (date, at) = (DateOnly.FromDateTime(when), TimeOnly.FromDateTime(when));

        // Where no hour of the day before is known, its film was still shot before this night.
        var isNight = date == day.AddDays(1) && IsNight(at, day, latest ?? DateTime.MaxValue);
        return (said ?? (isNight ? day : date), when);
    }

    static bool IsNight(TimeOnly at, DateOnly day, DateTime? latest) => at < NightEnds && latest > day.ToDateTime(at);
}
