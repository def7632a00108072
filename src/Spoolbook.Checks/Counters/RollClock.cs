using System.Globalization;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Counters;

/// <summary>
/// The days and hours written on a roll's sheet, in its order. A take without a day belongs to the day of
/// loading or of threading again, as on the papers; one before six in the morning may be of the night after it.
/// </summary>
sealed class RollClock
{
    static readonly TimeSpan NightEnds = TimeSpan.FromHours(6);
    static readonly TimeSpan Day = TimeSpan.FromDays(1);
    readonly TimeSpan _slack;
    readonly List<Moment> _moments = [];

    /// <param name="slack">Seconds by which two watches may differ.</param>
    public RollClock(Roll roll, Ratio slack)
    {
        _slack = TimeSpan.FromSeconds(slack.ToDouble());
        Add(new(null, $"roll {roll.Name.Value}", "was loaded", roll.Load.On.Place, roll.Load.On.Value, roll.Load.On.Value, true));
        var day = roll.Load.On.Value.Date;
        foreach (var entry in roll.Log)
        {
            day = entry is Reload { On: { } threaded } ? threaded.Value.Date : day;
            if (MomentOf(entry, day) is { } moment)
            {
                Add(moment);
            }
        }

        if (roll.Unload is { } unload)
        {
            Add(new(null, $"roll {roll.Name.Value}", "was taken out", unload.On.Place, unload.On.Value, unload.On.Value, true));
        }
    }

    /// <summary>When something happened: a minute, or a day where no hour was written.</summary>
    /// <param name="Who">To what: the subject of a sentence.</param>
    /// <param name="Did">What happened: its verb, in the past.</param>
    /// <param name="IsDated">Whether its day is known too, and not its hour alone.</param>
    public sealed record Moment(LogEntry? Entry, string Who, string Did, Place Place, DateTime From, DateTime To, bool IsDated)
    {
        /// <summary>The hour, with its day where that is not plain; the day alone where no hour was written.</summary>
        public string Written(bool hourIsEnough) =>
            From.ToString(From != To ? "yyyy-MM-dd" : hourIsEnough ? "HH:mm" : "yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
    }

    /// <summary>
    /// The moments that break the order, each with one that it contradicts: as few as will do, and of several
    /// on end the first, since one slip moves all that follow.
    /// </summary>
    public IEnumerable<(Moment Moment, Moment Against)> OutOfOrder()
    {
        var held = LongestInOrder([.. _moments.Where(m => m.IsDated)]);
        var astray = false;
        foreach (var (at, moment) in _moments.Index())
        {
            var (before, after) = (_moments.Take(at).Where(held.Contains).ToArray(), _moments.Skip(at + 1).Where(held.Contains).ToArray());
            if (!moment.IsDated)
            {
                if (!FitsSomeDay(moment, before.LastOrDefault(), after.FirstOrDefault()))
                {
                    yield return (moment, before[^1]);
                }

                continue;
            }

            var isRight = held.Contains(moment);
            var against = isRight || astray ? null : before.LastOrDefault(m => m.From > moment.To + _slack) ?? after.FirstOrDefault(m => moment.From > m.To + _slack);
            if (against is not null)
            {
                yield return (moment, against);
            }

            astray = !isRight;
        }
    }

    void Add(Moment moment) => _moments.Add(moment);

    Moment? MomentOf(LogEntry entry, DateTime day) => entry switch
    {
        Reload { On: { } on } => new(entry, "the roll", "was threaded again", on.Place, on.Value, on.Value, true),
        Take { At: { } at } take => At(take, take.On?.Value.ToDateTime(default) ?? day, at),
        Take { On: { } on } take => new(take, $"take {take.Slate}", "was shot", on.Place, on.Value.ToDateTime(default), on.Value.ToDateTime(default) + Day, true),
        { At: { } at } => new(entry, $"the {entry.Word}", "was", at.Place, default(DateTime) + at.Value.ToTimeSpan(), default(DateTime) + at.Value.ToTimeSpan(), false),
        _ => null,
    };

    Moment At(Take take, DateTime day, Located<TimeOnly> at)
    {
        var when = day + at.Value.ToTimeSpan();
        when += take.On is null && at.Value.ToTimeSpan() < NightEnds && _moments.Any(m => m.IsDated && m.From > when) ? Day : TimeSpan.Zero;
        return new(take, $"take {take.Slate}", "was shot", at.Place, when, when, true);
    }

    // Nobody writes the day beside a rewind: any day will do that lies between its neighbours.
    bool FitsSomeDay(Moment hour, Moment? before, Moment? after)
    {
        if (before is null || after is null)
        {
            return true;
        }

        var when = before.From.Date + hour.From.TimeOfDay;
        return (when >= before.From - _slack && when <= after.To + _slack) || when + Day <= after.To + _slack;
    }

    HashSet<Moment> LongestInOrder(List<Moment> moments)
    {
        var (best, from) = (new int[moments.Count], new int[moments.Count]);
        for (var i = 0; i < moments.Count; i++)
        {
            from[i] = Enumerable.Range(0, i).Where(j => moments[j].From <= moments[i].To + _slack).OrderByDescending(j => best[j]).FirstOrDefault(-1);
            best[i] = from[i] < 0 ? 1 : best[from[i]] + 1;
        }

        var held = new HashSet<Moment>(ReferenceEqualityComparer.Instance);
        for (var i = Array.IndexOf(best, best.Max()); i >= 0; i = from[i])
        {
            held.Add(moments[i]);
        }

        return held;
    }
}
