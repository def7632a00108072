using ClosedXML.Excel;
using Spoolbook.Papers.Ledger;
using Spoolbook.Shoot.Forecasts;

namespace Spoolbook.Papers.Workbook;

/// <summary>The charts of the first sheet: film left evening by evening with the forecast, and film by account.</summary>
static class BookCharts
{
    /// <param name="places">Where they go.</param>
    public static IEnumerable<BookChart> Of(LedgerSource source, WorkbookUnits units, SheetWriter writer, IReadOnlyList<ChartPlace> places)
    {
        var say = writer.Words;
        var points = StockLineTable.Of(source, units, say);
        if (points.Rows.Count > 1)
        {
            List<string> lines = ["Film left"];
            if (points.Rows.Any(p => !p.Likely.IsEmpty))
            {
                lines.AddRange(FilmForecast.Percents.Select(StockLineTable.Head));
            }

            yield return new(
                places[0],
                say.Word("chart-stock"),
                IsBars: false,
                units.UnitName,
                Column(writer, points, "Evening"),
                [.. lines.Select(h => Column(writer, points, h))]
            );
        }

        var accounts = AccountsTable.Of(source, units, say);
        yield return new(
            places[1],
            say.Word("chart-account"),
            IsBars: true,
            units.UnitName,
            Column(writer, accounts, "Account"),
            [Column(writer, accounts, "In the chart")]
        );
    }

    static ChartColumn Column<TRow>(SheetWriter writer, TableSheet<TRow> table, string head)
    {
        var cells = writer.Written[table.Table].Cells(head);
        var value = table.Columns.Single(c => c.Head == head).Value;
        return new(
            writer.Words.Head(table.Table, head),
            Address(cells.FirstCell().CellAbove().AsRange()),
            Address(cells),
            [.. table.Rows.Select(value)]
        );
    }

    static string Address(IXLRange range)
    {
        var (first, last) = (range.RangeAddress.FirstAddress, range.RangeAddress.LastAddress);
        var from = $"${first.ColumnLetter}${first.RowNumber}";
        var to = $"${last.ColumnLetter}${last.RowNumber}";
        var sheet = range.Worksheet.Name.Replace("'", "''", StringComparison.Ordinal);
        return $"'{sheet}'!{from}" + (from == to ? "" : ":" + to);
    }
}
