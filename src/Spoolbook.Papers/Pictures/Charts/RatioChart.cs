using Spoolbook.Film;
using Spoolbook.Papers.Facts;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Papers.Pictures.Charts;

/// <summary>What each scene exposed for a foot of good film, held against the ratio that was planned.</summary>
static class RatioChart
{
    /// <summary>The chart; null where no take was shot.</summary>
    public static string? Draw(Books books, Wording say, PictureWidth width)
    {
        var scenes = books.Stock.Scenes.Where(s => s.Name is not null && s.Use.Tally.Exposed > Footage.Zero).ToList();
        return scenes.Count == 0 ? null : new BarChart(say.Words["chart-ratio"], [.. scenes.Select(s => Scene(s, say))], mark => say.Plain(mark))
        {
            Against = books.Shoot.Production.PlannedRatio?.Value is { } planned
                ? new Bar(say.Words.Fill("chart-planned", ("ratio", say.ToOne(planned))), planned.ToDouble(), say.Words.Fill("chart-planned", ("ratio", say.ToOne(planned))) + ".")
                : null,
        }.Draw(ChartSize.Of(width));
    }

    static Bar Scene(UseOfPart scene, Wording say) => new(
        scene.Name ?? "",
        scene.Use.ExposedToGood?.ToDouble(),
        scene.Use.ExposedToGood is { } ratio ? say.ToOne(ratio) : say.Words.Fill("chart-no-good-take", ("film", say.LengthWithUnit(scene.Use.Tally.Exposed))));
}
