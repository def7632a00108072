using Spoolbook.Film;
using Spoolbook.Papers.Pictures;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot;

namespace Spoolbook.Papers.WrapSummaries.Charts;

/// <summary>Where all the film is: how the shoot used it, and what is left.</summary>
static class AccountChart
{
    /// <summary>The chart; null without any film.</summary>
    public static string? Draw(Books books, PaperFormat format, PictureWidth width)
    {
        var (total, metric) = (books.Shoot.Total, books.Metric.Total);
        Footage Left(Func<Shoot.Accounts.StockLotBook, Footage> where) =>
            books.Stock.Counted.Aggregate(Footage.Zero, (sum, lot) => sum + where(lot));
        var stock = books.Metric.Stock;
        (string Word, Footage Film, bool Always, long Metric)[] accounts =
        [
            ("good", total.Good, true, metric.Good),
            ("hold", total.Hold, false, metric.Hold),
            ("no-good", total.NoGood, true, metric.NoGood),
            ("waste", total.Waste, true, metric.Waste),
            ("chart-short-ends", Left(l => l.ShortEnds), true, stock.ShortEnds),
            ("chart-in-camera", Left(l => l.InCamera), false, stock.InCamera),
            ("chart-sealed", Left(l => l.Unopened), true, stock.Unopened),
        ];
        var all = accounts.Aggregate(Footage.Zero, (sum, a) => sum + Footage.Max(Footage.Zero, a.Film));
        return all == Footage.Zero
            ? null
            : new BarChart(
                format.Words["chart-account"],
                [
                    .. accounts
                        .Where(a => a.Always || a.Film > Footage.Zero)
                        .Select(a => new Bar(
                            format.Words[a.Word],
                            ChartScale.Units(Footage.Max(Footage.Zero, a.Film), format),
                            format.AccountWithUnit(a.Film, a.Metric)
                                + ", "
                                + format.Percent(new Ratio(Math.Max(0, a.Film.Frames), all.Frames))
                        )),
                ],
                mark => format.Plain(mark) + (mark == 0 ? format.RulerUnitName : "")
            ).Draw(ChartSize.Of(width));
    }
}
