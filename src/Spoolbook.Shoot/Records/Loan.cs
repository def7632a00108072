using System.Collections.Immutable;

namespace Spoolbook.Shoot.Records;

/// <summary>The loan of the whole kit: who lent it, to whom, and for how long.</summary>
public sealed record Loan(Place Place)
{
    /// <summary>Whose the kit is.</summary>
    public Located<string>? Owner { get; init; }

    /// <summary>Who borrowed it, by id.</summary>
    public Located<string>? BorrowedBy { get; init; }

    /// <summary>The day that it went out.</summary>
    public Located<DateOnly>? On { get; init; }

    /// <summary>The day that it must be back.</summary>
    public Located<DateOnly>? Due { get; init; }

    /// <summary>The day that it came back; null while it is out.</summary>
    public Located<DateOnly>? BackOn { get; init; }

    /// <summary>What the owner wants done before it goes back: free lines.</summary>
    public ImmutableArray<Located<string>> Care { get; init; } = [];
}
