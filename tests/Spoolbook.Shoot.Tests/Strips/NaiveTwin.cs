using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Shoot.Tests.Strips;

/// <summary>
/// The strip again, slow and obvious: a box for each frame, and every line of the log walked over all the
/// boxes it touches. Shares no code with the real one but the records.
/// </summary>
sealed class NaiveTwin
{
    // Two feet left over are no short end where nobody mentions them.
    const int Mentioned = 80;

    readonly long _loaded;
    readonly Box[] _boxes;

    readonly bool _isMentioned;

    /// <param name="isMentioned">Whether another roll or the stock log names what was left of it.</param>
    public NaiveTwin(Roll roll, long loaded, bool isMentioned = false)
    {
        _isMentioned = isMentioned;
        _loaded = loaded;
        _boxes = [.. Enumerable.Range(0, (int)loaded).Select(_ => new Box())];
        Play(roll);
    }

    public IReadOnlyList<Box> Boxes => _boxes;

    public int Passes { get; private set; } = 1;

    /// <summary>The shooting day, entry by entry.</summary>
    public List<DateOnly> Days { get; } = [];

    /// <summary>Frames that the spring drove since it was wound, entry by entry.</summary>
    public List<long> Driven { get; } = [];

    DateOnly Today { get; set; }

    /// <summary>One frame.</summary>
    internal sealed class Box
    {
        public List<(Take Take, int Pass)> Takes { get; } = [];

        /// <summary>The day of each thing that happened to it, by kind; the first of a kind counts.</summary>
        public Dictionary<string, DateOnly> Days { get; } = [];

        /// <summary>The day of each take on it.</summary>
        public List<(Mark Mark, DateOnly Day)> TakeDays { get; } = [];

        /// <summary>1 for a normal exposure; passes add up.</summary>
        public double Light { get; set; }

        public bool Ran { get; set; }

        public bool Fog { get; set; }

        public bool Head { get; set; }

        public bool Tail { get; set; }

        public bool RunOff { get; set; }

        public bool Thrown { get; set; }

        public void Happened(string what, DateOnly day) => Days.TryAdd(what, day);

        /// <summary>The day that its film is booked on.</summary>
        public DateOnly Day()
        {
            foreach (var ruin in new[] { "fog", "tail", "head" })
            {
                if (Days.TryGetValue(ruin, out var day))
                {
                    return day;
                }
            }

            foreach (var mark in new[] { Mark.Test, Mark.NoGood, Mark.Hold, Mark.Good })
            {
                if (TakeDays.Exists(t => t.Mark == mark))
                {
                    return TakeDays.First(t => t.Mark == mark).Day;
                }
            }

            return Days[
                RunOff ? "run-off"
                : Ran ? "ran"
                : "left"
            ];
        }

        public (Account Account, WasteCause? Cause) Falls()
        {
            if (Fog)
            {
                return (Account.Waste, WasteCause.Fog);
            }

            if (Tail)
            {
                return (Account.Waste, WasteCause.Tail);
            }

            if (Head)
            {
                return (Account.Waste, WasteCause.Head);
            }

            foreach (
                var (mark, account, cause) in new (Mark, Account, WasteCause?)[]
                {
                    (Mark.Test, Account.Waste, WasteCause.Test),
                    (Mark.NoGood, Account.NoGood, null),
                    (Mark.Hold, Account.Hold, null),
                    (Mark.Good, Account.Good, null),
                }
            )
            {
                if (Takes.Exists(t => t.Take.Mark.Value == mark))
                {
                    return (account, cause);
                }
            }

            if (!Ran)
            {
                return Thrown ? (Account.Waste, WasteCause.End) : (Account.ShortEnd, null);
            }

            return (Account.Waste, RunOff ? WasteCause.RunOff : WasteCause.Gap);
        }
    }

    void Play(Roll roll)
    {
        long stand = 0,
            zero = 0,
            driven = 0;
        var isSprung = true;
        Today = roll.Load.Day?.Value ?? DateOnly.FromDateTime(roll.Load.On.Value);
        DateTime? latest = roll.Load.On.Value;
        if (roll.Load.Head is { } head)
        {
            Each(0, head.Value.Frames, b => b.Head = true);
            Each(0, head.Value.Frames, b => b.Happened("head", Today));
            stand = head.Value.Frames;
            Ran(stand);
        }

        foreach (var entry in roll.Log)
        {
            latest = TurnTheCalendar(entry, latest);
            Days.Add(Today);
            switch (entry)
            {
                case Take take:
                    var from = take.From is null ? stand : take.From.Value.Frames + zero;
                    var to = Math.Max(from, take.To.Value.Frames + zero);
                    Each(from, to, b => b.Takes.Add((take, Passes)));
                    Each(from, to, b => b.TakeDays.Add((take.Mark.Value, Today)));
                    Expose(take, from, to);
                    isSprung = take.Motor is null && take.HandCranked?.Value != true;
                    if (take.Wound?.Value == true)
                    {
                        driven = 0;
                    }
                    else if (isSprung && take.SingleFrames is null && take.Interval is null && take.Timed is null)
                    {
                        Each(from, to, _ => driven++);
                    }

                    stand = to;
                    break;
                case Rewind rewind:
                    var back = rewind.To.Value.Frames + zero;
                    if (back < stand)
                    {
                        Passes++;
                    }

                    driven = 0;
                    stand = back;
                    break;
                case RunOff runOff:
                    var end = runOff.To.Value.Frames + zero;
                    Each(stand, end, _ => driven += isSprung ? 1 : 0);
                    Each(stand, end, b =>
                    {
                        b.RunOff |= !b.Ran;
                        if (!b.Ran)
                        {
                            b.Happened("run-off", Today);
                        }
                    });
                    stand = end;
                    break;
                case Fog fog:
                    Each(stand - fog.Before.Value.Frames, stand + fog.After.Value.Frames, b =>
                    {
                        b.Fog = true;
                        b.Happened("fog", Today);
                    });
                    break;
                case Wind:
                    driven = 0;
                    break;
                case Reload reload:
                    driven = 0;
                    var lost = reload.Lost?.Value.Frames ?? 0;
                    Each(stand, stand + lost, b =>
                    {
                        b.Head = true;
                        b.Happened("head", Today);
                    });
                    zero += reload.ZeroMoved?.Value.Frames ?? 0;
                    var threaded = reload.To is null ? stand + lost : reload.To.Value.Frames + zero;
                    if (threaded < stand)
                    {
                        Passes++;
                    }

                    stand = threaded;
                    break;
            }

            Driven.Add(driven);
            Ran(stand);
        }

        if (roll.Unload is { } unload)
        {
            TurnTheCalendar(unload.On.Value, unload.Day?.Value, latest);
            var tail = unload.Tail?.Value.Frames ?? 0;
            var at = Math.Min(stand, _loaded - tail);
            Each(at, at + tail, b => b.Tail = true);
            Each(at, at + tail, b => b.Happened("tail", Today));
            Ran(at + tail);
            var left = _boxes.Count(b => b.Falls().Account == Account.ShortEnd);
            Each(0, _loaded, b =>
                b.Thrown = unload.ShortEnd is { } said ? said.Value == Remainder.Thrown : !_isMentioned && left <= Mentioned
            );
        }

        Each(0, _loaded, b => b.Happened("left", Today));
    }

    // The latest hour of the current day.
    DateTime? TurnTheCalendar(LogEntry entry, DateTime? latest)
    {
        if (entry is Reload { On: { } threaded })
        {
            return TurnTheCalendar(threaded.Value, entry.Day?.Value, latest);
        }

        var was = Today;
        var date = entry is Take { On: { } on } ? on.Value : (DateOnly?)null;
        Today = entry.Day?.Value ?? date ?? Today;
        if (entry.At is null)
        {
            return Today == was ? latest : null;
        }

        var hour = (entry.Day is not null && date is { } written ? written : Today).ToDateTime(entry.At.Value);
        if (Today != was)
        {
            return hour;
        }

        var isLate = (hour.Hour < 6 && latest > hour) || IsWithinThreeHours(hour.AddDays(1), latest);
        var isNight = isLate && !(entry.Day is not null && date is not null);
        hour = isNight ? hour.AddDays(1) : hour;
        return latest is null || hour > latest ? hour : latest;
    }

    DateTime? TurnTheCalendar(DateTime when, DateOnly? said, DateTime? latest)
    {
        var was = Today;
        var nextMorning = DateOnly.FromDateTime(when) == Today.AddDays(1);
        var isSmall = when.Hour < 6 && (latest is null || latest > when.AddDays(-1));
        var isNight = nextMorning && (isSmall || IsWithinThreeHours(when, latest));
        Today = said ?? (isNight ? Today : DateOnly.FromDateTime(when));
        return Today != was || latest is null || when > latest ? when : latest;
    }

    static bool IsWithinThreeHours(DateTime morning, DateTime? latest) =>
        latest?.Date == morning.Date && latest >= morning.AddHours(-3) && latest <= morning.AddHours(3);

    void Expose(Take take, long from, long to)
    {
        for (var frame = Math.Max(from, 0); frame < Math.Min(to, _loaded); frame++)
        {
            var open = take.Shutter?.Value switch
            {
                "quarter" => Math.Sqrt(0.5),
                "half" => 0.5,
                "closed" => 0,
                _ => 1,
            };
            var light =
                open == 0 ? 0
                : take.Exposed is { } meant ? Math.Exp(meant.Value * Math.Log(2))
                : open;
            var since = frame - from + 0.5;
            if (take.FadeIn is { } opening && since < opening.Value.Frames)
            {
                light *= since / opening.Value.Frames;
            }

            var left = to - frame - 0.5;
            if (take.FadeOut is { } closing && left < closing.Value.Frames)
            {
                light *= left / closing.Value.Frames;
            }

            _boxes[frame].Light += light;
        }
    }

    // All film up to here has gone past the gate.
    void Ran(long position) => Each(0, position, b =>
        {
            b.Ran = true;
            b.Happened("ran", Today);
        });

    void Each(long from, long to, Action<Box> act)
    {
        for (var frame = from; frame < to; frame++)
        {
            if (frame >= 0 && frame < _loaded)
            {
                act(_boxes[frame]);
            }
        }
    }
}
