using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Stocks;

/// <summary>The stock log's entries about the film of a roll.</summary>
static class StockTouch
{
    /// <summary>
    /// Entries about a roll's own can: its unit, its short end, or its whole lot. A roll without a unit has only the
    /// entries about the whole lot.
    /// </summary>
    public static IEnumerable<StockEntry> Of(Production production, Roll roll) =>
        from entry in production.StockLog
        where
            roll.ShortEndOf is { } parent && entry.ShortEndOf?.Value == parent.Value
            || (
                entry.Lot is { } lot
                && lot.Value == production.LotOf(roll)?.Name.Value
                && (entry.Units.IsEmpty || (roll.ShortEndOf is null && entry.Units.Any(u => u.Value == roll.Unit?.Value)))
            )
        select entry;
}
