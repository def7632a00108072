using System.Collections.Immutable;
using Spoolbook.Entry.Takes;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Entry;

/// <summary>What taking in a table would do, with nothing done yet.</summary>
public sealed record ImportPlan
{
    /// <summary>The files that change.</summary>
    public ImmutableArray<ChangedFile> Files { get; init; } = [];

    /// <summary>What keeps the table from being taken in; if there is anything, there are no files.</summary>
    public ImmutableArray<Objection> Refused { get; init; } = [];

    /// <summary>What is worth knowing.</summary>
    public ImmutableArray<Objection> Notes { get; init; } = [];

    /// <summary>Takes that the roll files do not have yet.</summary>
    public int New { get; init; }

    /// <summary>Takes of which something changes.</summary>
    public int Changed { get; init; }

    /// <summary>Takes that are as they were.</summary>
    public int Same { get; init; }

    internal ImmutableArray<RowOutcome> Outcomes { get; init; } = [];

    internal TakeHeads? Heads { get; init; }

    /// <summary>Where the row of a take is in the table; null where it has none.</summary>
    public string? RowOf(string? roll, string? slate) =>
        Outcomes.FirstOrDefault(o => o.Row.Roll == roll && o.Row.Said == slate)?.Row.Address;

    /// <summary>What the rows say that does not hold in the book that the changed files make.</summary>
    public ImmutableArray<Objection> Against(ShootBook after) => OutcomeCheck.Against(this, after);
}
