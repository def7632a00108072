using System.Collections.Immutable;
using Spoolbook.Entry;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Importing;

/// <summary>The result of importing a table.</summary>
/// <param name="Plan">What it would do.</param>
/// <param name="DryRun">Whether to write nothing in any case.</param>
internal sealed record ImportReport(ImportPlan Plan, bool DryRun)
{
    /// <summary>What stops the import.</summary>
    public ImmutableArray<Objection> Refused { get; init; } = [];

    /// <summary>The production with the takes in it; null where the table was refused.</summary>
    public CheckedProduction? After { get; init; }

    /// <summary>The findings that the takes bring.</summary>
    public ImmutableArray<Finding> Worse { get; init; } = [];

    /// <summary>Whether the production could not be read with the takes in it.</summary>
    public bool IsUnreadable { get; init; }

    /// <summary>Whether the takes bring errors.</summary>
    public bool HasNewErrors => Worse.Any(f => f.Level == Level.Error);

    /// <summary>Whether the takes can be written.</summary>
    public bool IsWell => Refused.IsEmpty && !HasNewErrors && !IsUnreadable;

    /// <summary>Whether the roll files are written.</summary>
    public bool Written => IsWell && !DryRun;
}
