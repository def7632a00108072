using System.Collections.Immutable;
using Spoolbook.Entry.Takes;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Entry;

/// <summary>What importing a table would do. Nothing is written yet.</summary>
public sealed record ImportPlan
{
    public ImmutableArray<ChangedFile> Files { get; init; } = [];

    /// <summary>What stops the import. If anything does, no file changes.</summary>
    public ImmutableArray<Objection> Refused { get; init; } = [];

    /// <summary>What is worth knowing.</summary>
    public ImmutableArray<Objection> Notes { get; init; } = [];

    /// <summary>Takes that the roll files do not have yet.</summary>
    public int New { get; init; }

    public int Changed { get; init; }

    public int Same { get; init; }

    internal ImmutableArray<RowOutcome> Outcomes { get; init; } = [];

    internal TakeHeads? Heads { get; init; }

    /// <summary>Where the row of a take is in the table; null for a take without a row.</summary>
    public string? RowOf(string? roll, string? slate) =>
        Outcomes.FirstOrDefault(o => o.Row.Roll == roll && o.Row.Said == slate)?.Row.Address;

    /// <summary>Rows that say something else than the books made from the changed files.</summary>
    public ImmutableArray<Objection> Against(ShootBook after) => OutcomeCheck.Against(this, after);
}
