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
                    ? say.Fill("about.forecast", ("draws", say.FormatFor(source.Shoot.Production).Thousands(FilmForecast.Draws)))
                : source.Forecast.FewestToDraw == FilmForecast.UsualShotsToGoOn ? say["about.forecast-none"]
                : say.Fill("about.forecast-none-of", ("fewest", source.Forecast.FewestToDraw.ToString(CultureInfo.InvariantCulture))),
            [
                new("Day", CellFormat.Count, 6, d => d.Ahead),
                new("Date", CellFormat.Date, 11, d => d.On),
                new("Shots", CellFormat.Count, 8, d => d.Shots),
                .. FilmForecast.Percents.Select(
                    (p, i) => new Column<ForecastDay>(Head("Simulated", p), CellFormat.Frames, 11, d => d.Needed[i].Frames)
                ),
                .. FilmForecast.Percents.Select(
                    (p, i) =>
                        units.OfColumn<ForecastDay>(Head("Needed", p), 9, Head("Simulated", p), d => d.Needed[i]) with
                        {
                            Summed = false,
                        }
                ),
                .. FilmForecast.Percents.Select(
                    (p, i) =>
                        new Column<ForecastDay>(Head("Left", p), CellFormat.Length, 9, d =>
                            units.Shown(
                                $"(StockToShoot-[@[{Head("Simulated", p)}]])",
                                source.Forecast.Input.Stock - d.Needed[i],
                                signed: true
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
    static void MarkShort(WrittenTable table) => table.MarkWhere("Lasts", "AND([@Lasts]<>\"\",[@Lasts]<=0.5)", SheetWriter.Alarm);
}
