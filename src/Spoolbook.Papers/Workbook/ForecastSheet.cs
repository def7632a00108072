using System.Globalization;
using Spoolbook.Papers.Ledger;
using Spoolbook.Shoot.Forecasts;

namespace Spoolbook.Papers.Workbook;

/// <summary>The days to come. The drawn figures are typed, and everything that follows from them is a formula.</summary>
static class ForecastSheet
{
    public static TableSheet<ForecastDay> Of(LedgerSource source, WorkbookUnits units, WorkbookTerms say) =>
        new(
            "Forecast",
            source.Forecast.Basis == ForecastBasis.Drawn
                    ? say.Fill("about.forecast", ("draws", FilmForecast.Draws.ToString(CultureInfo.InvariantCulture)))
                : source.Forecast.FewestToDraw == FilmForecast.UsualShotsToGoOn ? say["about.forecast-none"]
                : say.Fill("about.forecast-none-of", ("fewest", source.Forecast.FewestToDraw.ToString(CultureInfo.InvariantCulture))),
            [
                new("Day", CellFormat.Count, 22, d => d.Ahead),
                new("Date", CellFormat.Date, 12, d => d.On),
                new("Shots", CellFormat.Count, 8, d => d.Shots),
                .. FilmForecast.Percents.Select(
                    (p, i) => new Column<ForecastDay>(Head("Drawn", p), CellFormat.Frames, 11, d => d.Needed[i].Frames)
                ),
                .. FilmForecast.Percents.Select(
                    (p, i) =>
                        new Column<ForecastDay>(Head("Needed", p), CellFormat.Length, 11, d =>
                            CellValue.Calculated($"[@[{Head("Drawn", p)}]]/FramesPerUnit", units.Length(d.Needed[i]))
                        )
                ),
                .. FilmForecast.Percents.Select(
                    (p, i) =>
                        new Column<ForecastDay>(Head("Left", p), CellFormat.Length, 11, d =>
                            CellValue.Calculated(
                                $"StockToShoot-[@[{Head("Needed", p)}]]",
                                units.Length(source.Forecast.Input.Stock - d.Needed[i])
                            )
                        )
                ),
                new("Lasts", CellFormat.Percent, 9, d => (Film.Ratio?)d.Lasts),
            ],
            source.Forecast.Days
        )
        {
            Finish = MarkShort,
        };

    /// <summary>The head of a column of figures for a percentage of draws.</summary>
    public static string Head(string what, int percent) => string.Create(CultureInfo.InvariantCulture, $"{what} {percent}");

    /// <summary>A column's value for all shots left.</summary>
    public static string AtTheEnd(string what, int percent) =>
        $"INDEX(Forecast[{Head(what, percent)}],ROWS(Forecast[{Head(what, percent)}]))";

    // An evening by which the film has more likely run out than not.
    static void MarkShort(WrittenTable table) =>
        table.Cells("Lasts").AddConditionalFormat().WhenEqualOrLessThan(0.5).Fill.SetBackgroundColor(SheetWriter.Alarm);
}
