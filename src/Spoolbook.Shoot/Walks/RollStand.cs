using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Walks;

/// <summary>
/// Where a roll is between two entries of its log: the film, the camera, the hands and the clock. Only this knows what
/// an entry does to them. Code that reads or changes a log steps with <see cref="After"/>; code with a whole roll reads
/// its <see cref="RollWalk"/>.
/// </summary>
/// <remarks>
/// <para>After loading, the film is at the end of the head. A take without <c>from</c> starts where the film is. A
/// rewind moves it back and starts the next pass; one that does not go back starts none. A run-off moves it on. An
/// open door moves nothing.</para>
/// <para>A reload loses film onwards from where it is. Later positions on the sheet count from the new zero. If it
/// leaves the film behind where it was, that is another pass.</para>
/// </remarks>
public sealed record RollStand
{
    /// <summary>Film loaded; null where it is unknown, as while the sheet is being read.</summary>
    public Footage? Length { get; init; }

    /// <summary>Where the film is on the strip; null after an unreadable entry, until the next that says where it ended.</summary>
    public Footage? Position { get; init; }

    /// <summary>How far down the film the sheet's zero is: zero until the first reload.</summary>
    public Footage Zero { get; init; }

    /// <summary>Where the film is, from the sheet's zero.</summary>
    public Footage? OnSheet => Position - Zero;

    /// <summary>The farthest that the film has been, on the strip.</summary>
    public Footage Furthest { get; init; }

    /// <summary>The pass; from 1.</summary>
    public int Pass { get; init; } = 1;

    /// <summary>The body with the film, by name; null where the sheet names none.</summary>
    public string? Body { get; init; }

    /// <summary>Who last loaded, reloaded or unloaded it, by id; null where the sheet names nobody.</summary>
    public string? By { get; init; }

    /// <summary>The shooting day.</summary>
    public DateOnly Day { get; init; }

    /// <summary>The latest known hour of the shooting day, on the calendar; null for none.</summary>
    public DateTime? Latest { get; init; }

    /// <summary>The speed set.</summary>
    public Speed Speed { get; init; } = Speed.Normal;

    /// <summary>The sound roll last named; null where none was.</summary>
    public string? SoundRoll { get; init; }

    /// <summary>
    /// Film of the roll that the spring drove, in takes and run-offs, since it was wound: by the log, else at the full
    /// when the roll was loaded, rewound or threaded again (common practice). Frame by frame it is wound in between, and
    /// drives nothing here.
    /// </summary>
    public Footage Driven { get; init; }

    /// <summary>Film that the spring drives before it must be wound; none where it drove more than a full wind.</summary>
    /// <param name="fullWind">Film that a full wind of the body drives.</param>
    public Footage LeftOnSpring(Footage fullWind) => Footage.Max(Footage.Zero, fullWind - Driven);

    /// <summary>Whether the spring drives it: as on the last take, and at first.</summary>
    public bool IsOnSpring { get; init; } = true;

    /// <summary>Where the winding is logged; null where it is assumed.</summary>
    public Place? WoundAt { get; init; }

    /// <summary>A roll before anything happened to it.</summary>
    /// <param name="length">Film loaded, if known.</param>
    public static RollStand Before(Roll roll, Footage? length = null) =>
        new()
        {
            Length = length,
            Position = Footage.Zero,
            Body = roll.Body?.Value,
            By = roll.Load.By?.Value,
            Day = DayOf(roll.Load),
        };

    /// <summary>A roll as it was loaded.</summary>
    /// <param name="length">Film loaded, if known.</param>
    public static RollStand Loaded(Roll roll, Footage? length = null) => Before(roll, length).With(roll.Load);

    /// <summary>A roll just loaded, while its sheet is read; a null load could not be read, and leaves the position unknown.</summary>
    public static RollStand Loaded(Load? load) =>
        load is null ? new() : new RollStand { Position = Footage.Zero, Day = DayOf(load) }.With(load);

    /// <summary>Where the roll is after an entry.</summary>
    public RollStand After(LogEntry entry) => Meet(entry).After;

    /// <summary>Where the roll is after an unreadable entry.</summary>
    /// <param name="speed">The speed that it set, as far as could be read.</param>
    public RollStand AfterUnreadable(Speed speed) => this with { Position = null, Speed = speed };

    /// <summary>An entry, with the roll before and after.</summary>
    public Moment Meet(LogEntry entry)
    {
        var (day, when) = DayRule.Of(entry, Day, Latest);
        var (starts, ends) = entry switch
        {
            Take take => Run(take),
            Rewind rewind => (Position, rewind.To.Value + Zero),
            RunOff runOff => (Position, runOff.To.Value + Zero),
            Reload reload => (Position, Threaded(reload)),
            _ => (Position, Position),
        };
        var goesBack = entry is Rewind or Reload && ends < Position;
        var after = Booked(day, when) with
        {
            Position = ends,
            Furthest = ends is { } stood ? Footage.Max(Furthest, stood) : Furthest,
            Pass = Pass + (goesBack ? 1 : 0),
            SoundRoll = (entry as Take)?.SoundRoll?.Value ?? SoundRoll,
        };
        return new Moment(entry, this, Left(after, entry, starts))
        {
            Starts = starts,
            Day = day,
            When = when,
        };
    }

    /// <summary>Unloading, with the roll before and after.</summary>
    public Moment Meet(Unload unload)
    {
        var (day, when) = DayRule.Of(unload.On.Value, unload.Day?.Value, Day, Latest);
        return new Moment(null, this, Booked(day, when) with { By = unload.By?.Value ?? By })
        {
            Starts = Position,
            Day = day,
            When = when,
        };
    }

    static DateOnly DayOf(Load load) => load.Day?.Value ?? DateOnly.FromDateTime(load.On.Value);

    RollStand With(Load load) =>
        this with
        {
            Position = load.Head?.Value ?? Footage.Zero,
            Furthest = Footage.Max(Furthest, load.Head?.Value ?? Footage.Zero),
            Latest = load.On.Value,
            Speed = load.SpeedAfter?.Value ?? Speed.Normal,
        };

    // A take written to end before its start ends at its start.
    (Footage? Starts, Footage? Ends) Run(Take take)
    {
        var (starts, ends) = (take.From is { } from ? from.Value + Zero : Position, take.To.Value + Zero);
        return (starts, starts is { } start ? Footage.Max(start, ends) : ends);
    }

    Footage? Threaded(Reload reload) =>
        reload.To is { } to ? to.Value + Zero + MovedBy(reload) : Position + (reload.Lost?.Value ?? Footage.Zero);

    static Footage MovedBy(Reload reload) => reload.ZeroMoved?.Value ?? Footage.Zero;

    RollStand Booked(DateOnly day, DateTime? when) =>
        this with
        {
            Day = day,
            Latest =
                day != Day || Latest is null ? when
                : when > Latest ? when
                : Latest,
        };

    static RollStand Left(RollStand after, LogEntry entry, Footage? starts) =>
        entry switch
        {
            Take { Wound: { Value: true } wound } take => after with
            {
                Speed = take.Speed,
                IsOnSpring = take.IsOnSpring,
                Driven = Footage.Zero,
                WoundAt = wound.Place,
            },
            Take take => after with
            {
                Speed = take.Speed,
                IsOnSpring = take.IsOnSpring,
                Driven = after.Driven + (take.IsOnSpring && !take.IsFrameByFrame ? after.DrivenFrom(starts) : Footage.Zero),
            },
            RunOff => after with { Driven = after.Driven + (after.IsOnSpring ? after.DrivenFrom(starts) : Footage.Zero) },
            Wind => after with { Driven = Footage.Zero, WoundAt = entry.Place },
            Reload reload => after with
            {
                Zero = after.Zero + MovedBy(reload),
                Body = reload.Body?.Value ?? after.Body,
                By = reload.By?.Value ?? after.By,
                Driven = Footage.Zero,
                WoundAt = null,
            },
            Rewind => after with { Driven = Footage.Zero, WoundAt = null },
            _ => after,
        };

    // What the log puts outside the roll, or behind where it starts, drove nothing.
    Footage DrivenFrom(Footage? starts)
    {
        if (starts is not { } from || Position is not { } to)
        {
            return Footage.Zero;
        }

        return Length is { } length ? new Span(from, to).Within(length).Length : Footage.Max(Footage.Zero, to - from);
    }
}
