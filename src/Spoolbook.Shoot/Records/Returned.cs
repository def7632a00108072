namespace Spoolbook.Shoot.Records;

/// <summary>How many pieces went out with the kit and how many came back, whose they are, and their condition.</summary>
/// <param name="Out">Pieces lent; by default 1.</param>
/// <param name="Back">Pieces returned; null while the kit is out.</param>
public sealed record Returned(int Out, Located<int>? Back, Located<string>? Note)
{
    /// <summary>The owner, where it is not the loan's.</summary>
    public Located<string>? Owner { get; init; }

    /// <summary>The borrower, by id, where it is not the loan's.</summary>
    public Located<string>? BorrowedBy { get; init; }

    /// <summary>The day that it must be back, where it is not the loan's.</summary>
    public Located<DateOnly>? Due { get; init; }

    /// <summary>The value of one piece, in the currency of the rates; null where it is not written.</summary>
    public Located<decimal>? Value { get; init; }

    /// <summary>Where it is kept: its case, and its slot there.</summary>
    public Located<string>? Kept { get; init; }

    /// <summary>Its condition when it went out, in words.</summary>
    public Located<string>? ConditionOut { get; init; }

    /// <summary>Its condition when it came back, in words.</summary>
    public Located<string>? ConditionBack { get; init; }

    /// <summary>Pieces that did not come back; null while the kit is out.</summary>
    public int? Missing => Back is null ? null : Out - Back.Value;
}
