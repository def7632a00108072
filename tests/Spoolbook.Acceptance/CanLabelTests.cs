using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Spoolbook.Acceptance;

/// <summary>The label on each can: what a lab reads first, and what a code reader reads.</summary>
public sealed class CanLabelTests(MadeSample sample) : IClassFixture<MadeSample>, IDisposable
{
    // Of the practice roll, which is not among the ledger's.
    const string PracticeCan = "HERON/R00/8";

    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void A_date_does_not_come_apart_at_the_end_of_a_line()
    {
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(sample.PathOf("can-labels.pdf"));
        var words = pdf.GetPage(1).GetWords().ToList();
        var years = words.Index().Where(w => w.Item.Text == "2026").ToList();

        Assert.Equal(7, years.Count);
        Assert.All(years, year => Assert.Equal(words[year.Index - 1].BoundingBox.Bottom, year.Item.BoundingBox.Bottom, 1.0));
    }

    [ToolTheory("zbarimg")]
    [InlineData("cut", "a4")]
    [InlineData("a4-8", "a4")]
    [InlineData("letter-6", "letter")]
    public void The_code_on_every_printed_label_is_the_can_in_the_ledger(string sheet, string paper)
    {
        var production = _bench.CopyOf(Repository.Sample);
        Write(production, $"labels: {{sheet: {sheet}}}");
        Make(production);
        Assert.Equal([.. Cans(), PracticeCan], CodesRead(GridOf(sheet, paper)));
    }

    // What scanners and copiers are set to (common practice).
    [ToolTheory("zbarimg")]
    [InlineData(100)]
    [InlineData(150)]
    [InlineData(200)]
    [InlineData(300)]
    public void All_codes_of_a_scanned_sheet_are_read(int resolution)
    {
        var sheet = _bench.PathOf("scan");
        Tools.Run("pdftoppm", "-r", resolution.ToString(CultureInfo.InvariantCulture), "-gray", sample.PathOf("can-labels.pdf"), sheet);
        var read = Tools.Run("zbarimg", "--nodbus", "--quiet", "--raw", "-Sdisable", "-Sqrcode.enable", sheet + "-1.pgm").Output;

        Assert.Equal(
            [PracticeCan, "HERON/R01/6", "HERON/R02/4", "HERON/R03/2", "HERON/R04/Z", "HERON/R05/X", "HERON/R06/V"],
            read.Split('\n', StringSplitOptions.RemoveEmptyEntries).Order(StringComparer.Ordinal)
        );
    }

    // The same resolutions (common practice).
    [ToolTheory("zbarimg")]
    [InlineData(100)]
    [InlineData(150)]
    [InlineData(200)]
    [InlineData(300)]
    public void All_codes_of_the_scanned_sheets_of_forty_rolls_are_read(int resolution)
    {
        Make(Path.Combine(TestFolders.Clean, "forty-rolls"));
        var sheet = _bench.PathOf("scan");
        Tools.Run(
            "pdftoppm",
            "-r",
            resolution.ToString(CultureInfo.InvariantCulture),
            "-gray",
            _bench.PathOf("papers/can-labels.pdf"),
            sheet
        );
        var read = Directory
            .EnumerateFiles(_bench.Folder, "scan-*.pgm")
            .SelectMany(scan =>
                Tools
                    .Run("zbarimg", "--nodbus", "--quiet", "--raw", "-Sdisable", "-Sqrcode.enable", scan)
                    .Output.Split('\n', StringSplitOptions.RemoveEmptyEntries)
            );

        Assert.Equal(Cans().Order(StringComparer.Ordinal), read.Order(StringComparer.Ordinal));
    }

    [ToolFact("zbarimg")]
    public void Forty_rolls_have_forty_labels_on_letter_paper_and_each_can_be_read()
    {
        Make(Path.Combine(TestFolders.Clean, "forty-rolls"));
        Assert.True(Cans().Count >= 40);
        Assert.Equal(Cans(), CodesRead(GridOf("cut", "letter")));
    }

    [Fact]
    public void The_roll_is_largest_then_that_it_is_exposed_and_the_process_and_all_else_is_smaller()
    {
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(sample.PathOf("can-labels.pdf"));
        // One column of labels after the other, each from its roll to the next.
        var letters = pdf.GetPage(1).Letters.Where(l => !string.IsNullOrWhiteSpace(l.Value)).ToList();
        var labels = letters
            .GroupBy(l => (Left: l.StartBaseLine.X < 300, Row: (int)((842 - (4.5 * 72 / 25.4) - l.StartBaseLine.Y) / (72 * 72 / 25.4))))
            .OrderBy(label => label.Key.Row)
            .ThenByDescending(label => label.Key.Left)
            .Select(label => Sizes([.. label]))
            .ToList();

        Assert.Equal(["R01", "R02", "R03", "R04", "R05", "R06", "R00"], labels.Select(sizes => sizes[0].Text));
        Assert.All(labels[..6], sizes =>
        {
            Assert.Equal("EXPOSED", sizes[1].Text);
            Assert.StartsWith("16mm·", sizes[2].Text, StringComparison.Ordinal);
            Assert.True(sizes[0].Size > 2 * sizes[1].Size);
            Assert.True(sizes[2].Size > 1.3 * sizes[3].Size);
            // A digit 10 mm high reads easily at arm's length (from memory); digits of this face are 0.727 of its size.
            Assert.True(sizes[0].Size * 0.727 >= 10 * 72 / 25.4);
            // Stock and return address are read in the hand without a thought (from memory: eight is that of a newspaper).
            Assert.True(sizes[^1].Size >= 8);
        });
        Assert.Contains("FOGGED·DONOTCORRECTeffects", labels[5][2].Text, StringComparison.Ordinal);
    }

    static List<(double Size, string Text)> Sizes(UglyToad.PdfPig.Content.Letter[] label) =>
        [
            .. label
                .GroupBy(l => Math.Round(l.PointSize, 1))
                .OrderByDescending(g => g.Key)
                .Select(g => (g.Key, string.Concat(g.Select(l => l.Value)))),
        ];

    [Fact]
    public void A_label_says_what_is_in_the_can_how_to_treat_it_and_where_it_goes_back()
    {
        var text = string.Join(' ', Pages.TextOf(sample.PathOf("can-labels.pdf")));

        foreach (
            var said in new[]
            {
                "EXPOSED",
                "ECN-2 Push +1",
                "Colour negative 500 T",
                "EI 1000",
                "0377-042",
                "16mm · ECN-2 Push +1 · 95+18 ft",
                "HERON/R04/Z · Can 4 of 6",
                "To: Brackwater Film Laboratory",
                "FOGGED · DO NOT CORRECT effects",
                "camera B1",
                "Sat 3",
                "Salt for the Heron",
                "Return to: Salt for the Heron",
                "DO NOT OPEN",
            }
        )
        {
            Assert.Contains(said, text, StringComparison.Ordinal);
        }
    }

    // A can of practice film looks like any other. In the lab's box it would be processed and billed.
    [Fact]
    public void A_can_of_practice_film_says_not_to_process_it()
    {
        var text = string.Join(' ', Pages.TextOf(sample.PathOf("can-labels.pdf")));

        Assert.Contains("R00 PRACTICE HERON/R00/8 16mm · 100+00 ft DO NOT PROCESS", text, StringComparison.Ordinal);
        Assert.Single(Regex.Matches(text, "DO NOT PROCESS"));
        Assert.Equal(6, Regex.Count(text, "EXPOSED"));
    }

    [Theory]
    [InlineData("a4-8", 8, 595.3, 841.9)]
    [InlineData("letter-6", 6, 612, 792)]
    [InlineData("cut", 8, 595.3, 841.9)]
    public void A_sheet_that_was_begun_is_used_up(string sheet, int labels, double width, double height)
    {
        var production = _bench.CopyOf(Repository.Sample);
        Write(production, $"labels: {{sheet: {sheet}, start: {labels - 1}}}");
        Make(production);

        using var pdf = UglyToad.PdfPig.PdfDocument.Open(_bench.PathOf("papers/can-labels.pdf"));
        Assert.Equal(2, pdf.NumberOfPages);
        Assert.Equal(width, pdf.GetPage(1).Width, 0.1);
        Assert.Equal(height, pdf.GetPage(1).Height, 0.1);
        Assert.Equal([2, 4], Pages.TextOf(_bench.PathOf("papers/can-labels.pdf")).Select(t => t.Split("EXPOSED").Length - 1));
        // The last row of the first sheet: nothing is printed on used labels.
        Assert.All(pdf.GetPage(1).Letters, l => Assert.True(l.StartBaseLine.Y < height / (labels / 2) + 40));
    }

    [Fact]
    public void A_label_that_the_sheet_does_not_have_is_flagged()
    {
        var production = _bench.CopyOf(Repository.Sample);
        Write(production, "labels: {sheet: letter-6, start: 7}");

        var (status, printed, _) = _bench.Run("make", production, "--out", "papers");

        Assert.Equal(0, status);
        Assert.Contains("start at label 7, but the sheet has 6", printed, StringComparison.Ordinal);
        var line =
            File.ReadLines(Path.Combine(production, "production.yaml"))
                .TakeWhile(l => !l.StartsWith("labels:", StringComparison.Ordinal))
                .Count() + 1;
        Assert.Contains(FormattableString.Invariant($"production.yaml:{line}:"), printed, StringComparison.Ordinal);
    }

    [Fact]
    public void A_can_that_is_kept_says_so_and_a_short_end_is_never_taken_for_exposed()
    {
        var production = _bench.CopyOf(Repository.Sample);
        var roll = Path.Combine(production, "rolls", "r02.yaml");
        File.WriteAllText(
            roll,
            File.ReadAllText(roll).Replace("lab: {process: ecn-2,", "lab: {send: no, process: ecn-2,", StringComparison.Ordinal)
        );
        File.Delete(Path.Combine(production, "rolls", "r05.yaml"));
        Bench.LeaveOutOfTheBox(production, "R02", "R05");
        Make(production);

        var text = string.Join(' ', Pages.TextOf(_bench.PathOf("papers/can-labels.pdf")));
        Assert.Contains("EXPOSED HOLD", text, StringComparison.Ordinal);
        Assert.Contains("RAW STOCK", text, StringComparison.Ordinal);
        Assert.Contains("DO NOT OPEN, DO NOT X-RAY: unexposed raw", text, StringComparison.Ordinal);
        Assert.Contains("HERON/R02-SE/", text, StringComparison.Ordinal);
    }

    void Make(string production) => Assert.Equal(0, _bench.Run("make", production, "--out", "papers").Status);

    static void Write(string production, string line)
    {
        var file = Path.Combine(production, "production.yaml");
        File.WriteAllText(file, File.ReadAllText(file).Replace("gauge: 16mm\n", line + "\n", StringComparison.Ordinal));
    }

    List<string> Cans()
    {
        using var ledger = JsonDocument.Parse(File.ReadAllBytes(_bench.PathOf("papers/ledger.json")));
        return
        [
            .. ledger
                .RootElement.GetProperty("rolls")
                .EnumerateArray()
                .Where(r => r.GetProperty("taken-out").ValueKind == JsonValueKind.String)
                .Select(r => r.GetProperty("can").GetString()!),
        ];
    }

    // Where the labels are, by the measures on the boxes of the two label sheets (common practice) and by the cut lines
    // of the plain one: two columns, with the sizes and places in millimetres.
    static (int Rows, double Left, double Top, double Wide, double High, double Step) GridOf(string sheet, string paper) =>
        (sheet, paper) switch
        {
            ("a4-8", _) => (4, 4.65, 13.1, 99.1, 67.7, 101.6),
            ("letter-6", _) => (3, 0.1563 * 25.4, 12.7, 101.6, 25.4 * 10 / 3, 4.1875 * 25.4),
            (_, "a4") => (4, 10, 4.5, 95, 72, 95),
            _ => (4, 12.95, 3.1, 95, 68.3, 95),
        };

    /// <summary>Each page as a picture, cut into its labels, and each label read by itself, like a can.</summary>
    List<string> CodesRead((int Rows, double Left, double Top, double Wide, double High, double Step) grid)
    {
        const int Resolution = 120;
        Assert.Equal(
            0,
            Tools
                .Run(
                    "pdftoppm",
                    "-r",
                    Resolution.ToString(CultureInfo.InvariantCulture),
                    "-gray",
                    _bench.PathOf("papers/can-labels.pdf"),
                    _bench.PathOf("sheet")
                )
                .Status
        );
        var labels =
            from page in Directory.EnumerateFiles(_bench.Folder, "sheet*.pgm").Order(StringComparer.Ordinal)
            let sheet = Greymap.Read(page)
            from row in Enumerable.Range(0, grid.Rows)
            from column in Enumerable.Range(0, 2)
            let label = sheet.Cut(
                Dots(grid.Left + (column * grid.Step)),
                Dots(grid.Top + (row * grid.High)),
                Dots(grid.Wide),
                Dots(grid.High)
            )
            select label.Write(FormattableString.Invariant($"{page}-{row}-{column}.pgm"));
        return
        [
            .. Tools
                .Run("zbarimg", ["--nodbus", "--quiet", "--raw", "-Sdisable", "-Sqrcode.enable", .. labels])
                .Output.Split('\n', StringSplitOptions.RemoveEmptyEntries),
        ];

        static int Dots(double millimetres) => (int)(millimetres / 25.4 * Resolution);
    }
}

/// <summary>A picture in grey, in poppler's format, which code readers take.</summary>
sealed record Greymap(int Wide, int High, byte[] Dots)
{
    public static Greymap Read(string path)
    {
        var bytes = File.ReadAllBytes(path);
        var head = System.Text.Encoding.ASCII.GetString(bytes, 0, Math.Min(bytes.Length, 40)).Split([' ', '\n'], 5);
        var size = (Wide: int.Parse(head[1], CultureInfo.InvariantCulture), High: int.Parse(head[2], CultureInfo.InvariantCulture));
        return new Greymap(size.Wide, size.High, bytes[^(size.Wide * size.High)..]);
    }

    public Greymap Cut(int left, int top, int wide, int high)
    {
        var dots = new byte[wide * high];
        for (var y = 0; y < high && top + y < High; y++)
        {
            Dots.AsSpan(((top + y) * Wide) + left, Math.Min(wide, Wide - left)).CopyTo(dots.AsSpan(y * wide));
        }

        return new Greymap(wide, high, dots);
    }

    public string Write(string path)
    {
        File.WriteAllBytes(
            path,
            [.. System.Text.Encoding.ASCII.GetBytes(FormattableString.Invariant($"P5\n{Wide} {High}\n255\n")), .. Dots]
        );
        return path;
    }
}
