using System.Collections.Immutable;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Papers.Ledger;

/// <summary>Everything that the ledger and the workbook tell: the books, each kept once, and what the checks said.</summary>
/// <param name="Made">The day of making, as it stands on the papers.</param>
public sealed record LedgerSource(
    ShootBook Shoot,
    StockBook Stock,
    CostBook Cost,
    ImmutableArray<Finding> Findings,
    ImmutableArray<Waived> Waived,
    DateOnly Made)
{
    /// <summary>Whether errors stand, so that the papers are drafts.</summary>
    public bool IsDraft => Findings.Any(f => f.Level == Level.Error);
}
