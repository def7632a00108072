using System.Collections.Immutable;

namespace Spoolbook.Shoot.Records;

/// <summary>A piece of the school's kit, lent to one production for some days.</summary>
public sealed record KitLoan(Place Place)
{
    /// <summary>The piece, by its name in the school's kit.</summary>
    public required Located<string> Piece { get; init; }

    /// <summary>The production, by its folder or its code.</summary>
    public required Located<string> To { get; init; }

    /// <summary>The day that it went out.</summary>
    public required Located<DateOnly> Out { get; init; }

    /// <summary>The day that it must be back.</summary>
    public required Located<DateOnly> Back { get; init; }

    /// <summary>The day that it came back; null while it is out.</summary>
    public Located<DateOnly>? CameBack { get; init; }

    /// <summary>How it came back; null where nobody wrote it down.</summary>
    public Located<KitCondition>? Condition { get; init; }

    /// <summary>Who took it, by a person's id; null where nobody wrote it down.</summary>
    public Located<string>? By { get; init; }

    /// <summary>What did not come back with it: the empty spool, the rewind key.</summary>
    public ImmutableArray<Located<string>> Missing { get; init; } = [];

    /// <summary>Remarks.</summary>
    public Located<string>? Note { get; init; }

    /// <summary>The last day on which the production has it: when it came back, or else when it must.</summary>
    public DateOnly End => CameBack?.Value ?? Back.Value;

    /// <summary>Whether the production has it on a day.</summary>
    public bool Covers(DateOnly day) => Out.Value <= day && day <= End;

    /// <summary>
    /// Whether two loans need the piece at the same time. It may come back in the morning and go out again on the same day.
    /// </summary>
    public bool Overlaps(KitLoan other) => Out.Value < other.End && other.Out.Value < End;

    /// <summary>Whether it should be back by a day, and is not.</summary>
    public bool IsOverdue(DateOnly today) => CameBack is null && Back.Value < today;
}
