using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Stocks;

/// <summary>Which entries of the stock log are about the film of a roll.</summary>
static class StockTouch
{
    /// <summary>
    /// Entries about a roll's own can: its unit or its short end, or its whole lot. A roll that does not say which
    /// unit it is has only those about the whole lot.
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
