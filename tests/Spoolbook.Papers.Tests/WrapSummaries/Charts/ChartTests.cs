using System.Globalization;
using System.Text;
using System.Xml.Linq;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Pictures;
using Spoolbook.Papers.Wording;
using Spoolbook.Papers.WrapSummaries.Charts;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot;

namespace Spoolbook.Papers.Tests.WrapSummaries.Charts;

/// <summary>
/// The charts of a shoot of one day and of forty, of one scene and of sixty, in feet and in metres, on paper and on a
/// phone.
/// </summary>
public class ChartTests
{
    public static TheoryData<int, int, int, string> Shoots =>
        new()
        {
            { 1, 0, 1, "feet" },
            { 1, 1, 6, "metres" },
            { 5, 3, 12, "feet" },
            { 3, 37, 60, "metres" },
            { 40, 0, 60, "feet" },
            { 39, 1, 25, "metres" },
        };

    [Theory]
    [MemberData(nameof(Shoots))]
    public void Nothing_is_cut_off_and_no_texts_overlap(int days, int ahead, int scenes, string units)
    {
        foreach (var svg in Drawn(Shoot(days, ahead, scenes, units)))
        {
            var width = double.Parse(svg.Attribute("viewBox")!.Value.Split(' ')[2], CultureInfo.InvariantCulture);
            var height = double.Parse(svg.Attribute("viewBox")!.Value.Split(' ')[3], CultureInfo.InvariantCulture);
            var texts = Texts(svg).ToList();
            Assert.All(texts, t =>
                Assert.True(
                    t.Left >= 0 && t.Right <= width && t.Top >= 0 && t.Bottom <= height,
                    $"{svg.Elements().First().Value}: '{t.Words}' is cut off at {t}"
                )
            );
            for (var i = 0; i < texts.Count; i++)
            {
                Assert.All(texts.Skip(i + 1), t =>
                    Assert.False(texts[i].LiesOn(t), $"{svg.Elements().First().Value}: '{texts[i].Words}' lies on '{t.Words}'")
                );
            }
        }
    }

    [Theory]
    [MemberData(nameof(Shoots))]
    public void Every_paper_can_draw_them(int days, int ahead, int scenes, string units) =>
        Assert.All(Drawn(Shoot(days, ahead, scenes, units)), svg => PictureCheck.Check(svg, (_, what) => Assert.Fail($"{what}")));

    [Fact]
    public void The_words_beside_a_chart_have_every_figure_in_it()
    {
        var books = Shoot(days: 5, ahead: 3, scenes: 11, "feet");
        var say = WordingOf(books);
        var words = Drawn(books).Select(svg => svg.Elements().Single(e => e.Name.LocalName == "desc").Value).ToList();
        Assert.All(books.Stock.Days.Take(5), d =>
            Assert.Contains($"{say.Date(d.On)}: {say.LengthWithUnit(d.Left)} left.", words[0], StringComparison.Ordinal)
        );
        Assert.Equal(3, books.Forecast.Days.Length);
        Assert.All(books.Forecast.Days, d =>
            Assert.All(d.Needed, n => Assert.Contains(say.LengthRoundedUp(n), words[0], StringComparison.Ordinal))
        );
        Assert.Contains($"Good: {say.LengthWithUnit(books.Shoot.Total.Good)}", words[1], StringComparison.Ordinal);
        Assert.Contains($"Not loaded: {say.LengthWithUnit(books.Stock.Counted.Single().Unopened)}", words[1], StringComparison.Ordinal);
        Assert.All(books.Stock.Scenes.Where(s => s.Name is not null), s =>
            Assert.Contains($"{s.Name}: {say.ToOne(s.Use.ExposedToGood)}", words[2], StringComparison.Ordinal)
        );
        Assert.Contains("Planned 4.0 : 1.", words[2], StringComparison.Ordinal);
    }

    // The evening's line ends at the sealed stock and the short ends, read off the scale beside it.
    [Fact]
    public void The_line_of_the_stock_is_where_the_scale_says()
    {
        var books = Shoot(days: 1, ahead: 0, scenes: 1, "feet");
        var svg = Drawn(books)[0];
        var zero = Texts(svg).Single(t => t.Words == "0 ft");
        var hundred = Texts(svg).Single(t => t.Words == "100");
        var end = svg.Elements().Last(e => e.Name.LocalName == "polyline").Attribute("points")!.Value.Split(' ')[^1].Split(',')[1];
        var feet =
            100
            * (zero.Bottom - (double.Parse(end, CultureInfo.InvariantCulture) + (ChartSize.Of(PictureWidth.Page).Type * 0.35)))
            / (zero.Bottom - hundred.Bottom);
        Assert.Equal(books.Stock.Left.Frames / 40.0, feet, tolerance: 0.5);
    }

    [Fact]
    public void Where_there_is_nothing_to_draw_there_is_no_chart()
    {
        var books = Tests.Ledger.Shoots.Of(TextFiles.OneFile("spoolbook: 1\ntitle: Nothing yet\ncode: NIL\n")).Books;
        var say = WordingOf(books);
        Assert.Null(StockChart.Draw(books, say, PictureWidth.Page));
        Assert.Null(AccountChart.Draw(books, say, PictureWidth.Page));
        Assert.Null(RatioChart.Draw(books, say, PictureWidth.Page));
    }

    [Fact]
    public void A_scene_without_a_good_take_has_no_ratio_and_says_what_it_exposed()
    {
        var books = Tests.Ledger.Shoots.Awkward.Books;
        var svg = XElement.Parse(RatioChart.Draw(books, WordingOf(books), PictureWidth.Page)!);
        Assert.Contains(Texts(svg), t => t.Words == "no good take (11+32 ft)");
    }

    static List<XElement> Drawn(Books books)
    {
        var say = WordingOf(books);
        return
        [
            .. from width in new[] { PictureWidth.Page, PictureWidth.Narrow }
            from svg in new[]
            {
                StockChart.Draw(books, say, width),
                AccountChart.Draw(books, say, width),
                RatioChart.Draw(books, say, width),
            }
            select XElement.Parse(svg!),
        ];
    }

    static PaperFormat WordingOf(Books books) =>
        new(books.Shoot.Production, Translations.Parse(new HouseTemplates().Find("words.en.txt")!.Text));

    // A roll a day with six good takes, one for each shot, going through the scenes again and again; one more take of
    // each fifth shot was no good.
    static Books Shoot(int days, int ahead, int scenes, string units)
    {
        var yaml = new StringBuilder().Append(
            CultureInfo.InvariantCulture,
            $"spoolbook: 1\ntitle: Long\ncode: LONG\nunits: {units}\nplan: {{running-time: 900s, ratio: 4}}\ndays:\n"
        );
        var first = new DateOnly(2026, 9, 26);
        foreach (var day in Enumerable.Range(0, days + ahead))
        {
            yaml.Append(CultureInfo.InvariantCulture, $"  - {{day: {day + 1}, on: {first.AddDays(day):yyyy-MM-dd}}}\n");
        }

        yaml.Append("shots:\n");
        var shots = Enumerable
            .Range(0, (days + ahead) * 6)
            .Select(i => (Scene: (i % scenes) + 1, Shot: (char)('A' + ((i / scenes) % 26)), Take: (i / scenes / 26) + 1))
            .ToList();
        foreach (var (scene, shot) in shots.Select(s => (s.Scene, s.Shot)).Distinct())
        {
            yaml.Append(CultureInfo.InvariantCulture, $"  - {{scene: {scene}, shot: {shot}}}\n");
        }

        yaml.Append(
            CultureInfo.InvariantCulture,
            $"lots: [{{lot: N, stock: Negative, ei: 250, process: ecn-2, length: 100ft, units: {days + Math.Max(1, ahead / 2)}}}]\n"
                + $"bodies: [{{body: B1, speeds: [24], shutter: 180}}]\nrolls:\n"
        );
        for (var day = 0; day < days; day++)
        {
            var at = 160;
            var log = shots
                .Skip(day * 6)
                .Take(6)
                .Select(
                    (s, i) =>
                        $"{{take: {{scene: {s.Scene}, shot: {s.Shot}, take: {s.Take}, to: {at += 250 + (60 * i)}fr, mark: "
                        + $"{(i == 4 ? "ng" : "good")}}}}}"
                )
                .ToList();
            yaml.Append(
                CultureInfo.InvariantCulture,
                $"  - roll: R{day + 1}\n    lot: N\n    unit: {day + 1}\n    body: B1\n    load: {{on: {first.AddDays(day):yyyy-MM-dd} "
                    + $"09:00, head: 160fr}}\n    log: [{string.Join(", ", log)}]\n    unload: {{on: {first.AddDays(day):yyyy-MM-dd} "
                    + $"17:00, tail: 80fr}}\n"
            );
        }

        return Tests.Ledger.Shoots.Of(TextFiles.OneFile(yaml.ToString())).Books;
    }

    static IEnumerable<Written> Texts(XElement svg)
    {
        double Number(XElement e, string name) => double.Parse(e.Attribute(name)!.Value, CultureInfo.InvariantCulture);
        foreach (var text in svg.Descendants().Where(e => e.Name.LocalName == "text"))
        {
            var moved = text.Ancestors()
                .Select(a => a.Attribute("transform")?.Value)
                .OfType<string>()
                .Sum(t => double.Parse(t["translate(".Length..t.IndexOf(' ', StringComparison.Ordinal)], CultureInfo.InvariantCulture));
            var size = Number(text, "font-size");
            var width = SvgWriter.WidthOf(text.Value, text.Attribute("font-weight") is not null, size);
            var left =
                moved
                + Number(text, "x")
                - (
                    text.Attribute("text-anchor")!.Value switch
                    {
                        "end" => width,
                        "middle" => width / 2,
                        _ => 0,
                    }
                );
            yield return new(text.Value, left, left + width, Number(text, "y") - (size * 0.75), Number(text, "y"));
        }
    }

    sealed record Written(string Words, double Left, double Right, double Top, double Bottom)
    {
        public bool LiesOn(Written other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;
    }
}
