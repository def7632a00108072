using System.Collections.Immutable;
using Spoolbook.Entry;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Importing;

/// <summary>What came of taking in a table.</summary>
/// <param name="Plan">What it would do.</param>
/// <param name="DryRun">Whether nothing was to be written in any case.</param>
internal sealed record ImportReport(ImportPlan Plan, bool DryRun)
{
    /// <summary>What keeps the table from being taken in.</summary>
    public ImmutableArray<Objection> Refused { get; init; } = [];

    /// <summary>The production with the takes in it; null where the table was refused before.</summary>
    public CheckedProduction? After { get; init; }

    /// <summary>What the checks say of it that they did not say before.</summary>
    public ImmutableArray<Finding> Worse { get; init; } = [];

    /// <summary>Whether the production could not be read with the takes in it.</summary>
    public bool IsUnreadable { get; init; }

    /// <summary>Whether the takes would bring errors that were not there.</summary>
    public bool HasNewErrors => Worse.Any(f => f.Level == Level.Error);

    /// <summary>Whether all is well with the table.</summary>
    public bool IsWell => Refused.IsEmpty && !HasNewErrors && !IsUnreadable;

    /// <summary>Whether the roll files are written.</summary>
    public bool Written => IsWell && !DryRun;
}
