using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Shoot.Tests.Sheets;

/// <summary>
/// A roll's sheet as an assistant writes it, line by line: <c>Sheet.Of(At(100)).Head(At(4)).Take("7B/1", to: At(14,
/// 10))</c>.
/// </summary>
sealed record Sheet(Roll Roll)
{
    public static readonly Place Nowhere = new("rolls/r01.yaml", 1, 1, 1);

    public static Sheet Of(Footage loaded, string name = "R01") =>
        new(
            new Roll(Nowhere)
            {
                Name = Written(name),
                Length = Written(loaded),
                Body = Written("B1"),
                Load = new Load(Nowhere) { On = Written(new DateTime(2026, 10, 4, 9, 10, 0)), By = Written("loader") },
                Log = [],
            }
        );

    /// <summary>A position in feet and frames of 16 mm film.</summary>
    public static Footage At(long feet, long frames = 0) => new((feet * 40) + frames);

    public static Footage Frames(long frames) => new(frames);

    public static Located<T> Written<T>(T value) => new(value, Nowhere);

    public static Located<T>? Perhaps<T>(T? value)
        where T : struct => value is { } known ? Written(known) : null;

    public static Located<string>? Perhaps(string? value) => value is null ? null : Written(value);

    public Sheet Head(Footage head) => new(Roll with { Load = Roll.Load with { Head = Written(head) } });

    /// <param name="slate">Scene, shot's letter and number: <c>7B/1</c>.</param>
    public Sheet Take(
        string slate,
        Footage to,
        Footage? from = null,
        Mark mark = Mark.Good,
        Footage? fadeIn = null,
        Footage? fadeOut = null,
        double? exposed = null,
        string? shutter = null,
        Func<Take, Take>? also = null
    )
    {
        var number = slate.Split('/');
        var scene = number[0].TrimEnd([.. "ABCDEFGHIJKLMNOPQRSTUVWXYZ"]);
        var take = new Take(Nowhere)
        {
            Scene = Written(scene),
            Shot = scene.Length < number[0].Length ? Written(number[0][scene.Length..]) : null,
            Number = Written(int.Parse(number[1], System.Globalization.CultureInfo.InvariantCulture)),
            To = Written(to),
            From = Perhaps(from),
            Mark = Written(mark),
            FadeIn = Perhaps(fadeIn),
            FadeOut = Perhaps(fadeOut),
            Exposed = Perhaps(exposed),
            Shutter = Perhaps(shutter),
        };
        return With(also is null ? take : also(take));
    }

    public Sheet Rewind(Footage to, bool? shutterClosed = true, bool? inDark = null, bool? zeroed = null) =>
        With(
            new Rewind(Nowhere)
            {
                To = Written(to),
                ShutterClosed = Perhaps(shutterClosed),
                InDark = Perhaps(inDark),
                CounterZeroed = Perhaps(zeroed),
            }
        );

    public Sheet RunOff(Footage to, bool? capped = true) => With(new RunOff(Nowhere) { To = Written(to), Capped = Perhaps(capped) });

    public Sheet Fog(Footage before, Footage after) => With(new Fog(Nowhere) { Before = Written(before), After = Written(after) });

    public Sheet Wind() => With(new Wind(Nowhere));

    public Sheet Remark(string words) => With(new Remark(Nowhere) { Note = Written(words) });

    public Sheet Reload(
        Footage? zeroMoved = null,
        Footage? lost = null,
        Footage? to = null,
        string? body = null,
        string? by = null,
        DateTime? on = null
    ) =>
        With(
            new Reload(Nowhere)
            {
                ZeroMoved = Perhaps(zeroMoved),
                Lost = Perhaps(lost),
                To = Perhaps(to),
                Body = Perhaps(body),
                By = Perhaps(by),
                On = Perhaps(on),
            }
        );

    /// <summary>The counters read at the end of the last line.</summary>
    public Sheet Read(Footage? dial = null, long? counter = null) =>
        new(
            Roll with
            {
                Log = Roll.Log.SetItem(Roll.Log.Length - 1, Roll.Log[^1] with { Dial = Perhaps(dial), Counter = Perhaps(counter) }),
            }
        );

    /// <summary>The day of loading, unless a test sets another.</summary>
    public static DateOnly FirstDay { get; } = new(2026, 10, 4);

    /// <summary>The hour of the last line and, on later days than that of loading, its date and its shooting day.</summary>
    public Sheet At(int? hour = null, int? on = null, int? day = null)
    {
        var last = Roll.Log[^1];
        var (at, date) = (
            hour is { } known ? new TimeOnly(known, 0) : (TimeOnly?)null,
            on is { } days ? FirstDay.AddDays(days) : (DateOnly?)null
        );
        last = last switch
        {
            Take take => take with { On = Perhaps(date) },
            Reload reload => reload with { On = Perhaps(date?.ToDateTime(at ?? new TimeOnly(8, 0))) },
            _ => last,
        };
        return new(
            Roll with
            {
                Log = Roll.Log.SetItem(
                    Roll.Log.Length - 1,
                    last with
                    {
                        At = Perhaps(at),
                        Day = Perhaps(day is { } said ? FirstDay.AddDays(said) : (DateOnly?)null),
                    }
                ),
            }
        );
    }

    /// <summary>The hour and minute of the last line.</summary>
    public Sheet AtHour(int hour, int minute) =>
        new(Roll with { Log = Roll.Log.SetItem(Roll.Log.Length - 1, Roll.Log[^1] with { At = Written(new TimeOnly(hour, minute)) }) });

    public Sheet Unload(Footage? tail = null, Remainder? left = null, DateTime? on = null) =>
        new(
            Roll with
            {
                Unload = new Unload(Nowhere)
                {
                    On = Written(on ?? new DateTime(2026, 10, 4, 16, 45, 0)),
                    Tail = Perhaps(tail),
                    ShortEnd = Perhaps(left),
                },
            }
        );

    public Sheet With(LogEntry entry) => new(Roll with { Log = Roll.Log.Add(entry) });

    /// <summary>The roll in a production like <see cref="SmallProduction"/>.</summary>
    public RollBook Book() => BookKeeper.Keep(SmallProduction.Of(this)).Rolls.Single();

    public Strip Strip() => Book().Strip;

    public Tally Tally() => Book().Tally;
}
