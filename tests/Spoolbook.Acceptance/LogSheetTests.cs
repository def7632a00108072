using System.Text.RegularExpressions;
using UglyToad.PdfPig;

namespace Spoolbook.Acceptance;

/// <summary>The blank log sheets, which the assistant fills in by hand.</summary>
public sealed partial class LogSheetTests(MadeSample sample) : IClassFixture<MadeSample>, IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void There_is_a_sheet_for_each_roll_to_be_shot_and_one_for_any_other()
    {
        var pages = Pages.TextOf(sample.PathOf("log-sheets.pdf"));

        Assert.Equal(["N250-A / 4", "N500-A / 2", "X200-A / 2", ""], pages.Select(p => Unit().Match(p).Value));
        Assert.Contains("0377-042 500 tungsten", pages[1], StringComparison.Ordinal);
        Assert.Contains("16mm · B&W REVERSAL 100+00 ft B1 · SW-1187", pages[2], StringComparison.Ordinal);
        Assert.All(pages, p => Assert.Contains("Salt for the Heron · HERON", p, StringComparison.Ordinal));
    }

    [Fact]
    public void It_has_the_columns_of_the_camera_report_that_a_hand_fills()
    {
        // A length and its seconds are worked out from the others; the report has the columns that its takes fill.
        var sheet = Columns(sample.PathOf("log-sheets.html"), 16);
        var report = Columns(sample.PathOf("camera-report-R04.html"), 16).TakeWhile(c => c != "Good G").ToList();

        Assert.Equal(report.Except(["Length", "Ran, s"]), sheet.Where(report.Contains));
        Assert.Equal(
            [
                "No.",
                "Slate",
                "Mark",
                "From",
                "To",
                "Dial, count",
                "fps",
                "Lens",
                "Stop",
                "Meter",
                "Filter",
                "Focus",
                "Time",
                "Wind",
                "Sound",
                "Remarks",
            ],
            sheet.TakeWhile(c => c != "Good G")
        );
    }

    [Theory]
    // A line of handwriting, in millimetres: college ruled, and narrow ruled, a quarter of an inch (common practice).
    [InlineData("a4", 7)]
    [InlineData("letter", 6.35)]
    public void A_line_is_high_enough_to_write_in_by_hand(string paper, double handwriting)
    {
        var production = _bench.CopyOf(Repository.Sample);
        var file = Path.Combine(production, "production.yaml");
        File.WriteAllText(file, File.ReadAllText(file).Replace("paper: a4", "paper: " + paper, StringComparison.Ordinal));
        Assert.Equal(0, _bench.Run("make", production, "--out", "papers", "--only", "log-sheets").Status);
        using var pdf = PdfDocument.Open(_bench.PathOf("papers/log-sheets.pdf"));
        var numbers = pdf.GetPage(1)
            .GetWords()
            .Where(w => w.BoundingBox.Left < 50 && int.TryParse(w.Text, out _))
            .Select(w => w.Letters[0].StartBaseLine.Y)
            .ToList();

        Assert.Equal(22, numbers.Count);
        Assert.All(numbers.Zip(numbers.Skip(1)), pair => Assert.True(pair.First - pair.Second >= handwriting * 72 / 25.4));
    }

    [Fact]
    public void A_busy_shoot_gets_more_lines_on_more_pages_and_letter_paper_loses_none()
    {
        var production = _bench.CopyOf(Path.Combine(TestFolders.Clean, "one-take-and-ninety"));
        var file = Path.Combine(production, "production.yaml");
        File.WriteAllText(file, File.ReadAllText(file).Replace("units: 2", "units: 3", StringComparison.Ordinal));
        Assert.Equal(0, _bench.Run("make", production, "--out", "papers").Status);
        var pages = Pages.TextOf(_bench.PathOf("papers/log-sheets.pdf"));

        // 91 takes on 192 ft: 47 to expect on 100, and a quarter more, with lines to the end of the page. The sheet for
        // any roll has one page.
        Assert.Contains(" 84 Good G", PageText.Of(_bench.PathOf("papers/log-sheets.html")), StringComparison.Ordinal);
        Assert.Equal([false, false, true, true], pages.Select(p => p.Contains("Camera assistant", StringComparison.Ordinal)));
        Assert.All(pages, p => Assert.Contains("No. Slate Mark From To", p, StringComparison.Ordinal));

        // A loose page says whose it is.
        Assert.All(pages.Take(3).Index(), p => Assert.Contains($"{p.Index + 1} of 3", p.Item, StringComparison.Ordinal));
        Assert.All(pages.Take(3), p => Assert.Contains(" / 3", p, StringComparison.Ordinal));
    }

    [Fact]
    public void However_long_the_names_the_sums_are_on_a_page_with_lines()
    {
        const string LongName = "Wolkenkratzerdachterrassenmorgennebelstimmungswandelaufnahme";
        var production = _bench.CopyOf(Repository.Sample);
        var file = Path.Combine(production, "production.yaml");
        File.WriteAllText(file, Regex.Replace(File.ReadAllText(file), "(?m)^title: .*$", $"title: {LongName} {LongName} {LongName}"));
        var stock = Path.Combine(production, "stock.yaml");
        File.WriteAllText(stock, Regex.Replace(File.ReadAllText(stock), "(?<=stock: )(\"[^\"]*\"|[^,}\n]+)", LongName));
        Assert.Equal(0, _bench.Run("make", production, "--out", "papers", "--only", "log-sheets").Status);

        Assert.All(Pages.TextOf(_bench.PathOf("papers/log-sheets.pdf")), p =>
            Assert.Contains("No. Slate Mark From To", p, StringComparison.Ordinal)
        );
    }

    static List<string> Columns(string page, int count) =>
        [.. Head().Matches(File.ReadAllText(page)).Select(m => m.Groups[1].Value).Take(count)];

    [GeneratedRegex(@"\S+ / \d+")]
    private static partial Regex Unit();

    [GeneratedRegex("<th scope=\"col\"[^>]*>([^<]*)</th>")]
    private static partial Regex Head();
}
