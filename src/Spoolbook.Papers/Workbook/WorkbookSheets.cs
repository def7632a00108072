using Spoolbook.Papers.Ledger;

namespace Spoolbook.Papers.Workbook;

/// <summary>
/// A workbook described and not yet written. Formulas name columns and lines, so that none depends on where these end
/// up.
/// </summary>
sealed record WorkbookSheets(SummarySheet Summary, IReadOnlyList<ITableSheet> Tables)
{
    /// <summary>The sheets, in the order a producer looks at them.</summary>
    public static WorkbookSheets Of(LedgerSource source, WorkbookTerms say)
    {
        var units = new WorkbookUnits(source.Shoot.Production);
        return new(
            SummarySheet.Of(source, units, say),
            [
                RollsSheet.Of(source, units, say),
                TakesSheet.Of(source, units, say),
                DaysSheet.Of(source, units, say),
                PartSheets.Scenes(source, units, say),
                ShotsSheet.Of(source, units, say),
                PartSheets.Lots(source, units, say),
                PartSheets.Bodies(source, units, say),
                StockSheets.Lots(source, units, say),
                StockSheets.Loads(source, units, say),
                StockSheets.ShortEnds(source, units, say),
                StockSheets.Log(source, say),
                CostSheet.Of(source, say),
                ForecastSheet.Of(source, units, say),
                FindingsSheet.Of(source, say),
                FilmSheet.Of(source, units, say),
            ]
        );
    }
}
