using System.Collections.Immutable;
using System.Globalization;
using Spoolbook.Film;
using Spoolbook.Papers.Ledger;
using Spoolbook.Shoot.Forecasts;

namespace Spoolbook.Papers.Workbook;

/// <summary>Film left evening by evening, and what is left of it in the evenings to come: the points of a chart.</summary>
static class StockLineTable
{
    public const string Table = "StockLine";

    public static TableSheet<StockPoint> Of(LedgerSource source, WorkbookUnits units, WorkbookTerms say) =>
        new(
            "Film left by evening",
            say.Fill("about.stock-line", ("unit", units.UnitName)),
            [
                new("Evening", CellFormat.Words, 10, p => p.Label),
                new("Date", CellFormat.Date, 11, p => p.On),
                new("Days ahead", CellFormat.Count, 8, p => p.Ahead),
                new("Film left", CellFormat.Seconds, 9, p =>
                    p.Left is { } left ? CellValue.Calculated(LeftOf(p), units.Length(left)) : default
                ),
                .. FilmForecast.Percents.Select(
                    (percent, i) =>
                        new Column<StockPoint>(Head(percent), CellFormat.Seconds, 9, p =>
                            p.Likely.IsEmpty ? default : CellValue.Calculated(LikelyOf(p, percent), units.Length(p.Likely[i]))
                        )
                ),
            ],
            Points(source, say)
        )
        {
            Table = Table,
        };

    /// <summary>The points; none where no stock came, or nothing has been loaded or shot yet.</summary>
    public static ImmutableArray<StockPoint> Points(LedgerSource source, WorkbookTerms say)
    {
        var (forecast, format) = (source.Forecast, say.FormatFor(source.Shoot.Production));
        var evenings = source.Stock.Days.Where(d => d.On <= forecast.Input.LastDay).ToList();
        if (evenings.Count == 0 || forecast.Input.Unit is null)
        {
            return [];
        }

        var received = new Footage(source.Stock.Counted.Sum(l => l.Received.Frames));
        var tonight = FilmForecast.Percents.Select(_ => forecast.Input.Stock).ToImmutableArray();
        return
        [
            new(say["received"], null, null, received, []),
            .. evenings.Select(
                (e, i) =>
                    new StockPoint(
                        format.DateShort(e.On),
                        e.On,
                        forecast.Days.IsEmpty || i < evenings.Count - 1 ? null : 0,
                        e.Left,
                        forecast.Days.IsEmpty || i < evenings.Count - 1 ? [] : tonight
                    )
            ),
            .. forecast.Days.Select(d => new StockPoint(
                d.On is { } on ? format.DateShort(on) : "+" + d.Ahead.ToString(CultureInfo.InvariantCulture),
                d.On,
                d.Ahead,
                null,
                [.. d.Needed.Select(n => forecast.Input.Stock - n)]
            )),
        ];
    }

    /// <summary>The head of what is left at least, by how sure that is.</summary>
    public static string Head(int percent) => string.Create(CultureInfo.InvariantCulture, $"{percent} % sure");

    static string LeftOf(StockPoint point) =>
        point.On is null ? "FilmReceived/FramesPerUnit" : "SUMPRODUCT((Days[Date]=[@Date])*Days[Left to shoot frames])/FramesPerUnit";

    static string LikelyOf(StockPoint point, int percent) =>
        point.Ahead == 0
            ? "StockToShoot/FramesPerUnit"
            : $"(StockToShoot-SUMPRODUCT((Forecast[Day]=[@[Days ahead]])*Forecast[{ForecastSheet.Head("Simulated", percent)}]))"
                + "/FramesPerUnit";
}
