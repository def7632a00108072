using Spoolbook.Film;
using Spoolbook.Papers.Pictures;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot;

namespace Spoolbook.Papers.WrapSummaries.Charts;

/// <summary>Where all the film is that ever came: how the shoot used it, what went another way, and what is left.</summary>
static class AccountChart
{
    /// <summary>The chart; null without any film.</summary>
    public static string? Draw(Books books, PaperFormat format, PictureWidth width)
    {
        var bridge = books.Bridge;
        var all = bridge.Places.Aggregate(Footage.Zero, (sum, place) => sum + Footage.Max(Footage.Zero, place.Film));
        if (all == Footage.Zero)
        {
            return null;
        }

        var percents = LargestRemainder.Round(
            [.. bridge.Places.Select(place => new Ratio(100 * Math.Max(0, place.Film.Frames), all.Frames))],
            100
        );
        var parts = bridge.Places.Zip(percents).ToDictionary(p => p.First.What, p => p.Second);
        return new BarChart(
            format.Words["chart-account"],
            [
                .. bridge
                    .Places.Where(BridgeWords.IsShown)
                    .Select(place => new Bar(
                        format.Words[BridgeWords.KeyOf(place.What)],
                        ChartScale.Units(Footage.Max(Footage.Zero, place.Film), format),
                        format.AccountWithUnit(place.Film, place.Centimetres) + ", " + format.Percent(new Ratio(parts[place.What], 100))
                    )),
            ],
            mark => format.Plain(mark) + (mark == 0 ? format.RulerUnitName : "")
        ).Draw(ChartSize.Of(width));
    }
}
