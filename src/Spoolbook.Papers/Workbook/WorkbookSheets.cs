using Spoolbook.Papers.Ledger;

namespace Spoolbook.Papers.Workbook;

/// <summary>
/// A workbook described and not yet written. Formulas name columns and lines, so that none depends on where these end
/// up.
/// </summary>
/// <param name="Answers">The first sheet.</param>
/// <param name="Pages">The sheets of tables, in the order a producer looks at them.</param>
/// <param name="Figures">The last sheet.</param>
sealed record WorkbookSheets(AnswersSheet Answers, IReadOnlyList<TablePage> Pages, FiguresSheet Figures)
{
    public static WorkbookSheets Of(LedgerSource source, WorkbookTerms say)
    {
        var units = new WorkbookUnits(source.Shoot.Production);
        return new(
            AnswersSheet.Of(source, units, say),
            [
                new("Cost", [CostSheet.Of(source, say)]),
                new(
                    "Days",
                    [DaysSheet.Of(source, units, say), ForecastSheet.Of(source, units, say), StockLineTable.Of(source, units, say)]
                ),
                new("Rolls", [RollsSheet.Of(source, units, say)]),
                new("Takes", [TakesSheet.Of(source, units, say)]),
                new(
                    "Stock",
                    [
                        StockSheets.Kinds(source, units, say),
                        StockSheets.Lots(source, units, say),
                        StockSheets.Log(source, say),
                        StockSheets.ShortEnds(source, units, say),
                        StockSheets.Loads(source, units, say),
                    ]
                ),
                new(
                    "Use",
                    [
                        AccountsTable.Of(source, units, say),
                        PartSheets.Scenes(source, units, say),
                        PartSheets.Lots(source, units, say),
                        PartSheets.Bodies(source, units, say),
                        ShotsSheet.Of(source, units, say),
                    ]
                ),
                new("Findings", [FindingsSheet.Of(source, say)]),
                new("Film", [FilmSheet.Of(source, units, say)]),
            ],
            FiguresSheet.Of(source, units, say)
        );
    }
}
