using System.Globalization;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Checks.Counters;

/// <summary>The days and hours on a roll's sheet, in its order, by shooting day: see <see cref="RollWalk"/>.</summary>
sealed class RollClock
{
    // A shooting day without hours ends with its night.
    static readonly TimeSpan DayAndNight = TimeSpan.FromHours(30);
    readonly TimeSpan _slack;
    readonly List<Moment> _moments;

    /// <param name="slack">Seconds by which two watches may differ.</param>
    public RollClock(RollWalk walk, Ratio slack)
    {
        _slack = TimeSpan.FromSeconds(slack.ToDouble());
        var (roll, name) = (walk.Roll, Sentence.Of("counter/time-out-of-order.value.roll", ("roll", walk.Roll.Name.Value)));
        _moments =
        [
            new(
                null,
                name,
                Sentence.Of("counter/time-out-of-order.value.was-loaded"),
                roll.Load.On.Place,
                roll.Load.On.Value,
                roll.Load.On.Value
            ),
            .. walk.Moments.Select((m, i) => MomentOf(m, walk.Moments.ElementAtOrDefault(i + 1))).OfType<Moment>(),
        ];
        if (roll.Unload is { } unload)
        {
            _moments.Add(
                new(
                    null,
                    name,
                    Sentence.Of("counter/time-out-of-order.value.was-taken-out"),
                    unload.On.Place,
                    unload.On.Value,
                    unload.On.Value
                )
            );
        }
    }

    /// <summary>When something happened: a minute, or a day where no hour was written.</summary>
    /// <param name="Who">What it happened to: the subject of a sentence.</param>
    /// <param name="Did">What happened: its verb, in the past.</param>
    public sealed record Moment(LogEntry? Entry, Sentence Who, Sentence Did, Place Place, DateTime From, DateTime To)
    {
        /// <summary>The hour, with the day where it is in doubt; the day alone where no hour was written.</summary>
        public string Written(bool hourIsEnough) =>
            From.ToString(
                From != To ? "yyyy-MM-dd"
                    : hourIsEnough ? "HH:mm"
                    : "yyyy-MM-dd HH:mm",
                CultureInfo.InvariantCulture
            );
    }

    /// <summary>
    /// The moments that break the order, each with one that it contradicts. As few as possible, and only the first of
    /// several in a row, since one slip moves all that follow.
    /// </summary>
    public IEnumerable<(Moment Moment, Moment Against)> OutOfOrder()
    {
        var held = LongestInOrder(_moments);
        var astray = false;
        foreach (var (at, moment) in _moments.Index())
        {
            var (before, after) = (_moments.Take(at).Where(held.Contains), _moments.Skip(at + 1).Where(held.Contains));
            var isRight = held.Contains(moment);
            var against =
                isRight || astray
                    ? null
                    : before.LastOrDefault(m => m.From > moment.To + _slack) ?? after.FirstOrDefault(m => moment.From > m.To + _slack);
            if (against is not null)
            {
                yield return (moment, against);
            }

            astray = !isRight;
        }
    }

    static Moment? MomentOf(Shoot.Walks.Moment moment, Shoot.Walks.Moment? next)
    {
        if (moment.Entry is not { } entry)
        {
            return null;
        }

        // Nobody dates a winding on the next morning: before an entry of another day its hour can be of either.
        if (entry is Wind or Remark && entry.Day is null && (entry.At is null || next?.Day != moment.Day))
        {
            return null;
        }

        var (who, did) = entry switch
        {
            Take take => (
                Sentence.Of("counter/time-out-of-order.value.take", ("take", take.Slate)),
                Sentence.Of("counter/time-out-of-order.value.was-shot")
            ),
            Reload => (
                Sentence.Of("counter/time-out-of-order.value.the-roll"),
                Sentence.Of("counter/time-out-of-order.value.was-threaded-again")
            ),
            Wind => (
                Sentence.Of("counter/time-out-of-order.value.the-spring"),
                Sentence.Of("counter/time-out-of-order.value.was-wound")
            ),
            _ => (
                Sentence.Of("counter/time-out-of-order.value.entry", ("entry", entry.Word)),
                Sentence.Of("counter/time-out-of-order.value.was")
            ),
        };
        if (moment.When is { } when)
        {
            return new(entry, who, did, (entry as Reload)?.On?.Place ?? entry.At!.Place, when, when);
        }

        var day = moment.Day.ToDateTime(default);
        return ((entry as Take)?.On ?? entry.Day) is not { } written ? null : new(entry, who, did, written.Place, day, day + DayAndNight);
    }

    HashSet<Moment> LongestInOrder(List<Moment> moments)
    {
        var (best, from) = (new int[moments.Count], new int[moments.Count]);
        for (var i = 0; i < moments.Count; i++)
        {
            from[i] = Enumerable
                .Range(0, i)
                .Where(j => moments[j].From <= moments[i].To + _slack)
                .OrderByDescending(j => best[j])
                .FirstOrDefault(-1);
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
