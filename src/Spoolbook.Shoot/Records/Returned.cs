namespace Spoolbook.Shoot.Records;

/// <summary>How many went out with the kit, and how many came back; whose they are, and what became of them.</summary>
/// <param name="Out">Pieces lent; 1 unless written.</param>
/// <param name="Back">Pieces returned; null while the kit is out.</param>
public sealed record Returned(int Out, Located<int>? Back, Located<string>? Note)
{
    /// <summary>Whose it is, where it is not the owner's of the loan.</summary>
    public Located<string>? Owner { get; init; }

    /// <summary>Who borrowed it, by id, where it is not the borrower of the loan.</summary>
    public Located<string>? BorrowedBy { get; init; }

    /// <summary>The day that it must be back, where it is not the loan's.</summary>
    public Located<DateOnly>? Due { get; init; }

    /// <summary>What one of them is worth, in the currency of the rates; null where nobody said.</summary>
    public Located<decimal>? Value { get; init; }

    /// <summary>Where it is kept: its case, and its slot there.</summary>
    public Located<string>? Kept { get; init; }

    /// <summary>What state it went out in, in words.</summary>
    public Located<string>? ConditionOut { get; init; }

    /// <summary>What state it came back in, in words.</summary>
    public Located<string>? ConditionBack { get; init; }

    /// <summary>Pieces that did not come back; null while the kit is out.</summary>
    public int? Missing => Back is null ? null : Out - Back.Value;
}
