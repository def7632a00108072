namespace Spoolbook.Shoot.Records;

/// <summary>The boxes at the foot of a roll's paper sheet, as the assistant added them up; null boxes were left blank.</summary>
public sealed record SheetTotals(Place Place)
{
    /// <summary>G.</summary>
    public Located<SheetLength>? Good { get; init; }

    /// <summary>H.</summary>
    public Located<SheetLength>? Hold { get; init; }

    /// <summary>NG.</summary>
    public Located<SheetLength>? NoGood { get; init; }

    /// <summary>W: head, tail, tests, run-offs and gaps.</summary>
    public Located<SheetLength>? Waste { get; init; }

    /// <summary>SE.</summary>
    public Located<SheetLength>? ShortEnd { get; init; }

    /// <summary>All of it: what was loaded.</summary>
    public Located<SheetLength>? Loaded { get; init; }

    /// <summary>Takes on the sheet, tests among them.</summary>
    public Located<int>? Takes { get; init; }
}
