using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Papers.Ledger;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Papers.Workbook;

/// <summary>Where all the film is: how the shoot used it, and what is left. The bars of a chart.</summary>
static class AccountsTable
{
    public const string Table = "Accounts";

    public static TableSheet<FilmAccount> Of(LedgerSource source, WorkbookUnits units, WorkbookTerms say)
    {
        var accounts = Accounts(source, say);
        var all = accounts.Sum(a => a.Film.Frames);
        return new(
            "Film by account",
            say["about.accounts"],
            [
                new("Account", CellFormat.Words, 22, a => a.Called),
                new("Frames", CellFormat.Frames, 9, a => CellValue.Calculated(a.Formula, a.Film.Frames)) { Summed = true },
                units.OfColumn<FilmAccount>("Length", 9, "Frames", a => a.Film, a => a.Centimetres),
                new("Part", CellFormat.Percent, 9, a =>
                    FilmSheet.Ratio("[@Frames]", "SUM(Accounts[Frames])", all == 0 ? null : new Ratio(a.Film.Frames, all))
                ),
                new("In the chart", CellFormat.Seconds, 9, a => CellValue.Calculated("[@Frames]/FramesPerUnit", units.Length(a.Film))),
            ],
            accounts
        )
        {
            Table = Table,
        };
    }

    /// <summary>The accounts that there are.</summary>
    public static ImmutableArray<FilmAccount> Accounts(LedgerSource source, WorkbookTerms say)
    {
        var (total, metric, stock) = (source.Shoot.Total, source.Books.Metric.Total, source.Books.Metric.Stock);
        FilmAccount Left(string word, string column, Func<StockLotBook, Footage> film, long centimetres, bool always) =>
            new(
                say.Word(word),
                $"MAX(0,SUMPRODUCT((Stock[For]=\"shoot\")*Stock[{column} frames]))",
                Footage.Max(Footage.Zero, source.Stock.Counted.Aggregate(Footage.Zero, (sum, lot) => sum + film(lot))),
                centimetres,
                always
            );

        FilmAccount[] accounts =
        [
            new(say.Word("good"), "FilmGood", total.Good, metric.Good, true),
            new(say.Word("hold"), "FilmHeld", total.Hold, metric.Hold, false),
            new(say.Word("no-good"), "FilmNoGood", total.NoGood, metric.NoGood, true),
            new(say.Word("waste"), "FilmWasted", total.Waste, metric.Waste, true),
            Left("chart-short-ends", "Short ends", l => l.ShortEnds, stock.ShortEnds, true),
            Left("chart-in-camera", "In camera", l => l.InCamera, stock.InCamera, false),
            Left("chart-sealed", "Sealed film", l => l.Unopened, stock.Unopened, true),
        ];
        return [.. accounts.Where(a => a.Always || a.Film > Footage.Zero)];
    }
}
