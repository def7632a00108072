using System.Collections.Immutable;
using Spoolbook.Film;

namespace Spoolbook.Shoot.Records;

/// <summary>One roll of film: the load, the log of what happened in order, the unload, and what the lab must do.</summary>
/// <param name="Place">The roll's first line.</param>
public sealed record Roll(Place Place)
{
    /// <summary>The roll's name on cans and papers: <c>R03</c>.</summary>
    public required Located<string> Name { get; init; }

    /// <summary>The lot of raw stock that it came from.</summary>
    public Located<string>? Lot { get; init; }

    /// <summary>Which unit of the lot; from 1.</summary>
    public Located<int>? Unit { get; init; }

    /// <summary>The roll whose short end this is, where it is one.</summary>
    public Located<string>? ShortEndOf { get; init; }

    /// <summary>Film loaded, where it is not the lot's full length.</summary>
    public Located<Footage>? Length { get; init; }

    /// <summary>The body it was loaded in.</summary>
    public Located<string>? Body { get; init; }

    /// <summary>The exposure index that it was rated at, if not the stock's own.</summary>
    public Located<int>? Rated { get; init; }

    /// <summary>A dummy roll for practising the load: in no account and no order.</summary>
    public Located<bool>? Practice { get; init; }

    /// <summary>How it was loaded.</summary>
    public required Load Load { get; init; }

    /// <summary>What happened, in order.</summary>
    public required ImmutableArray<LogEntry> Log { get; init; }

    /// <summary>How it was taken out; null while it is in the camera.</summary>
    public Unload? Unload { get; init; }

    /// <summary>What the lab must do with it.</summary>
    public RollOrder? Lab { get; init; }

    /// <summary>Rules broken on purpose on this roll.</summary>
    public ImmutableArray<Waiver> Accept { get; init; } = [];

    /// <summary>Whether it is a dummy roll.</summary>
    public bool IsPractice => Practice?.Value ?? false;

    /// <summary>The takes of the log, in order.</summary>
    public IEnumerable<Take> Takes => Log.OfType<Take>();
}

/// <summary>How a roll was loaded.</summary>
public sealed record Load(Place Place)
{
    /// <summary>When.</summary>
    public required Located<DateTime> On { get; init; }

    /// <summary>The shooting day that it is booked on, where that is not its date.</summary>
    public Located<DateOnly>? Day { get; init; }

    /// <summary>Who, by a person's id.</summary>
    public Located<string>? By { get; init; }

    /// <summary>In what light.</summary>
    public Located<LoadingLight>? Light { get; init; }

    /// <summary>Film exposed and lost in loading; the roll's first good frame lies after it.</summary>
    public Located<Footage>? Head { get; init; }

    /// <summary>Whether the loops were seen to be set.</summary>
    public Located<bool>? LoopsSet { get; init; }

    /// <summary>Whether the pressure plate was closed.</summary>
    public Located<bool>? PlateClosed { get; init; }

    /// <summary>Whether the slot for filters behind the lens held its holder, with a filter or without.</summary>
    public Located<bool>? SlotFilled { get; init; }

    /// <summary>The speed set after loading at the loading speed.</summary>
    public Located<Speed>? SpeedAfter { get; init; }
}

/// <summary>How a roll was taken out.</summary>
public sealed record Unload(Place Place)
{
    /// <summary>When.</summary>
    public required Located<DateTime> On { get; init; }

    /// <summary>The shooting day that it is booked on, where that is neither its date nor the night before it.</summary>
    public Located<DateOnly>? Day { get; init; }

    /// <summary>Who, by a person's id.</summary>
    public Located<string>? By { get; init; }

    /// <summary>In what light.</summary>
    public Located<LoadingLight>? Light { get; init; }

    /// <summary>Film exposed and lost in unloading, onwards from where the film stood, or at the very end of a roll run off.</summary>
    public Located<Footage>? Tail { get; init; }

    /// <summary>What became of the film left over, if any; kept unless it says thrown.</summary>
    public Located<Remainder>? ShortEnd { get; init; }
}

/// <summary>What the lab must do with one roll.</summary>
public sealed record RollOrder(Place Place)
{
    /// <summary>The process: <c>ecn-2</c>.</summary>
    public Located<string>? Process { get; init; }

    /// <summary>Stops to push (above zero) or pull (below).</summary>
    public Located<double>? Push { get; init; }

    /// <summary>What is wanted beside the process, by the names of the lab's services: <c>prep</c>, <c>scan</c>, <c>workprint</c>.</summary>
    public ImmutableArray<Located<string>> Services { get; init; } = [];

    /// <summary>Effects made in the camera that the lab is told of; empty where nobody named them.</summary>
    public ImmutableArray<Located<DeclaredEffect>> Effects { get; init; } = [];

    /// <summary>The day on which it went to the lab; null where nobody wrote it down.</summary>
    public Located<DateOnly>? SentOn { get; init; }

    /// <summary>Words for the lab.</summary>
    public Located<string>? Notes { get; init; }

    /// <summary>Whether the roll goes to the lab at all; it does unless it says no.</summary>
    public Located<bool>? Send { get; init; }
}

/// <summary>
/// A rule broken on purpose, with its reason. Turns a finding off and is printed on the papers. It covers what
/// lies in every place that it names; where it names none, the whole roll or production that it stands in.
/// </summary>
public sealed record Waiver(Place Place)
{
    /// <summary>The check's name, <c>group/what</c>.</summary>
    public required Located<string> Check { get; init; }

    /// <summary>The take it is about, as its slate <c>7B/1</c>.</summary>
    public Located<string>? Take { get; init; }

    /// <summary>The shot it is about, scene and letter together: <c>2C</c>; every take of it too.</summary>
    public Located<string>? Shot { get; init; }

    /// <summary>The roll it is about, where it stands among the production's.</summary>
    public Located<string>? Roll { get; init; }

    /// <summary>The lot of raw stock it is about; every roll of it too.</summary>
    public Located<string>? Lot { get; init; }

    /// <summary>The piece of the kit it is about, by its name there.</summary>
    public Located<string>? Piece { get; init; }

    /// <summary>Why; null where nobody wrote it, which is an error of its own.</summary>
    public Located<string>? Reason { get; init; }

    /// <summary>Who answers for it, by a person's id.</summary>
    public Located<string>? By { get; init; }
}
