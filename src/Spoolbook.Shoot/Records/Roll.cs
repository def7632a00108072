using System.Collections.Immutable;
using Spoolbook.Film;

namespace Spoolbook.Shoot.Records;

/// <summary>One roll of film: the load, the log of what happened in order, the unload, and the lab order.</summary>
/// <param name="Place">The roll's first line.</param>
public sealed record Roll(Place Place)
{
    /// <summary>The roll's name on cans and papers: <c>R03</c>.</summary>
    public required Located<string> Name { get; init; }

    /// <summary>The lot of its raw stock.</summary>
    public Located<string>? Lot { get; init; }

    /// <summary>Which unit of the lot; from 1.</summary>
    public Located<int>? Unit { get; init; }

    /// <summary>The roll that it is a short end of, if any.</summary>
    public Located<string>? ShortEndOf { get; init; }

    /// <summary>Film loaded, where it is not the lot's full length.</summary>
    public Located<Footage>? Length { get; init; }

    /// <summary>The body it was loaded in.</summary>
    public Located<string>? Body { get; init; }

    /// <summary>Whether the sheet names no body, and <see cref="Body"/> is the only one of the kit.</summary>
    public bool BodyIsTaken { get; init; }

    /// <summary>The exposure index that it was rated at, if not the stock's own.</summary>
    public Located<int>? Rated { get; init; }

    /// <summary>A dummy roll for practising the load, in no account and no order.</summary>
    public Located<bool>? Practice { get; init; }

    /// <summary>How it was loaded.</summary>
    public required Load Load { get; init; }

    /// <summary>What happened, in order.</summary>
    public required ImmutableArray<LogEntry> Log { get; init; }

    /// <summary>How it was unloaded; null while it is in the camera.</summary>
    public Unload? Unload { get; init; }

    /// <summary>The boxes at the foot of its paper sheet; null where nobody took them down.</summary>
    public SheetTotals? Totals { get; init; }

    /// <summary>Its order to the lab.</summary>
    public RollOrder? Lab { get; init; }

    /// <summary>Rules broken intentionally on this roll.</summary>
    public ImmutableArray<Waiver> Accept { get; init; } = [];

    /// <summary>Whether it is a dummy roll.</summary>
    public bool IsPractice => Practice?.Value ?? false;

    /// <summary>Whether it was taken out with nothing shot on it, and is raw stock again.</summary>
    public bool IsUnshot => !IsPractice && Unload is not null && !Takes.Any();

    /// <summary>Whether it goes to the lab, now or once it is unloaded: as its sheet says, else unless it is raw stock.</summary>
    public bool GoesToLab => !IsPractice && (Lab?.Send?.Value ?? !IsUnshot);

    /// <summary>The takes of the log, in order.</summary>
    public IEnumerable<Take> Takes => Log.OfType<Take>();
}
