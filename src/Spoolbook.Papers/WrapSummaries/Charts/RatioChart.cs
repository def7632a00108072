using Spoolbook.Film;
using Spoolbook.Papers.Pictures;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Papers.WrapSummaries.Charts;

/// <summary>What each scene exposed for a foot of good film, against the planned ratio.</summary>
static class RatioChart
{
    /// <summary>The chart; null without a take.</summary>
    public static string? Draw(Books books, PaperFormat format, PictureWidth width)
    {
        var scenes = books.Stock.Scenes.Where(s => s.Name is not null && s.Use.Tally.Exposed > Footage.Zero).ToList();
        return scenes.Count == 0
            ? null
            : new BarChart(format.Words["chart-ratio"], [.. scenes.Select(s => Scene(s, books, format))], mark => format.Plain(mark))
            {
                Against = books.Shoot.Production.PlannedRatio?.Value is { } planned
                    ? new Bar(
                        format.Words.Fill("chart-planned", ("ratio", format.ToOne(planned))),
                        planned.ToDouble(),
                        format.Words.Fill("chart-planned", ("ratio", format.ToOne(planned))) + "."
                    )
                    : null,
            }.Draw(ChartSize.Of(width));
    }

    static Bar Scene(UseOfPart scene, Books books, PaperFormat format) =>
        new(
            scene.Name ?? "",
            scene.Use.ExposedToGood?.ToDouble(),
            scene.Use.ExposedToGood is { } ratio
                ? format.ToOne(ratio)
                : format.Words.Fill(
                    "chart-no-good-take",
                    ("film", format.AccountWithUnit(scene.Use.Tally.Exposed, books.Metric.Of(scene.Use).Exposed))
                )
        );
}
