using System.Text;
using UglyToad.PdfPig;

namespace Spoolbook.Acceptance;

/// <summary>A school's name, logo and colours, from production.yaml to the head of its papers.</summary>
public sealed class SchoolTests : IDisposable
{
    const string Svg = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 10 10\">";

    readonly Bench _bench = new();
    readonly string _production;

    public SchoolTests()
    {
        _production = _bench.PathOf("production.yaml");
        File.Copy(Path.Combine(Repository.Root, "tests/Spoolbook.Acceptance/productions/hand-held-one-roll/sunday.yaml"), _production);
    }

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void Name_logo_and_colours_are_in_the_head_of_every_paper_without_a_template()
    {
        Logo(
            "school.svg",
            Svg
                + "<defs><clipPath id=\"c\"><rect width=\"9\" height=\"9\"/></clipPath></defs><g clip-path=\"url(#c)\"><circle cx=\"5\" "
                + "cy=\"5\" r=\"4\" fill=\"#123456\"/></g></svg>"
        );
        School("{name: The Old <Pier> & Co, logo: school.svg, colours: [\"#7a3410\", \"#2b5f86\"]}");

        Assert.Equal(0, _bench.Run("make", "production.yaml", "--out", "papers").Status);

        string[] papers =
        [
            "index.html",
            "lab-order.html",
            "wrap-summary.html",
            .. Directory.GetFiles(_bench.PathOf("papers"), "camera-report-*.html").Select(f => Path.GetFileName(f)),
        ];
        Assert.All(papers, paper =>
        {
            var page = File.ReadAllText(_bench.PathOf("papers/" + paper));
            var head = page[page.IndexOf("<header>", StringComparison.Ordinal)..page.IndexOf("</header>", StringComparison.Ordinal)];
            Assert.Contains("<title>The Old &lt;Pier&gt; &amp; Co</title>", head, StringComparison.Ordinal);
            Assert.Contains("<circle cx=\"5\" cy=\"5\" r=\"4\" fill=\"#123456\"", head, StringComparison.Ordinal);
            Assert.Contains("clip-path=\"url(#school-c)\"", head, StringComparison.Ordinal);
            Assert.Contains("fill=\"#7a3410\"", head, StringComparison.Ordinal);
            Assert.Contains("--accent: #2b5f86;", page, StringComparison.Ordinal);
        });
        Assert.Contains("The Old <Pier> & Co", Pages.TextOf(_bench.PathOf("papers/lab-order.pdf"))[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_colour_that_is_too_pale_is_flagged_and_a_darker_one_is_printed()
    {
        School("{name: Pier, colours: [\"#e6a817\", \"#2b5f86\"]}");

        var (status, printed, _) = _bench.Run("make", "production.yaml", "--out", "papers");

        Assert.Equal(0, status);
        Assert.Contains("[school/pale-colour]", printed, StringComparison.Ordinal);
        // This hue has 4.55 : 1 on white by WCAG 2.2's formula of relative luminance; 4.5 : 1 is its level AA.
        var head = File.ReadAllText(_bench.PathOf("papers/index.html")).Split("</header>")[0];
        Assert.DoesNotContain("#e6a817", head, StringComparison.Ordinal);
        Assert.Contains("#986f0f", head, StringComparison.Ordinal);
        Assert.Contains("#986f0f", ColoursOf("lab-order"));
    }

    [Fact]
    public void The_rules_of_every_paper_are_in_the_schools_colour_and_labels_for_cans_stay_black_and_white()
    {
        School("{name: Pier, colours: [\"#2b5f86\"]}");

        Assert.Equal(0, _bench.Run("make", "production.yaml", "--out", "papers").Status);

        Assert.All(
            ["camera-report-1", "exposure-card-B", "exposure-card-B-pocket", "kit-list", "lab-order", "log-sheets", "wrap-summary"],
            paper => Assert.Contains("#2b5f86", ColoursOf(paper))
        );
        Assert.Empty(ColoursOf("can-labels"));
    }

    [Fact]
    public void Without_a_school_a_paper_is_the_same_to_the_byte_with_any_colours_in_the_style_sheet()
    {
        Assert.Equal(0, _bench.Run("make", "production.yaml", "--out", "papers").Status);
        Style(text => string.Join('\n', text.Split('\n').Where(line => !line.Contains("--paper-", StringComparison.Ordinal))));
        Assert.Equal(0, _bench.Run("make", "production.yaml", "--out", "bare", "--templates", "own").Status);

        var (papers, bare) = (Bench.Bytes(_bench.PathOf("papers")), Bench.Bytes(_bench.PathOf("bare")));
        Assert.All(papers.Keys.Where(name => name.EndsWith(".pdf", StringComparison.Ordinal)), name =>
            Assert.Equal(papers[name], bare[name])
        );
        Assert.Empty(ColoursOf("lab-order"));
    }

    [Fact]
    public void A_users_own_style_sheet_says_where_colours_go()
    {
        School("{name: Pier, colours: [\"#2b5f86\"]}");
        Style(text =>
            text.Replace("--paper-head-rule: school;", "--paper-head-rule: ink;", StringComparison.Ordinal)
                .Replace("--paper-title-rule: school;", "--paper-title-rule: #b3005e;", StringComparison.Ordinal)
                .Replace("--paper-table-head: school;", "", StringComparison.Ordinal)
        );

        Assert.Equal(0, _bench.Run("make", "production.yaml", "--out", "papers", "--templates", "own").Status);

        // The school's own mark keeps its colour.
        Assert.Equal(["#2b5f86", "#b3005e"], ColoursOf("lab-order").Order());
        Assert.Equal(["#b3005e"], ColoursOf("exposure-card-B-pocket"));
    }

    [Theory]
    [InlineData("--paper-title-rule: gold;", "'gold' is not a colour of a paper: write school, school-2, ink or #rrggbb", 28)]
    [InlineData("--paper-footer: school;", "a paper has no 'footer' to colour", 16)]
    public void A_colour_for_what_no_paper_has_is_flagged_with_file_line_and_column(string line, string reason, int column)
    {
        Style(text => ":root {" + line + " }\n" + text);

        var (status, printed, _) = _bench.Run("make", "production.yaml", "--out", "papers", "--templates", "own");

        Assert.Equal(1, status);
        Assert.Contains(
            FormattableString.Invariant($"own/style.css:1:{column}: error: The template cannot be printed: {reason}"),
            printed,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\">\n <script>alert(1)</script></svg>",
        "logo.svg:2:3: error: The logo logo.svg cannot be drawn: <script> cannot be drawn"
    )]
    [InlineData(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\">\n  <rect onclick=\"x()\" width=\"1\" height=\"1\"/></svg>",
        "logo.svg:2:4: error: The logo logo.svg cannot be drawn: <rect> in a figure has no attribute 'onclick'"
    )]
    [InlineData(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\">\n<image href=\"https://example.org/x.png\"/></svg>",
        "logo.svg:2:2: error"
    )]
    [InlineData(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\">\n<rect fill=\"url(https://example.org/x.svg#a)\" width=\"1\" "
            + "height=\"1\"/></svg>",
        "logo.svg:2:2: error"
    )]
    [InlineData(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\">\n<style>@import 'x.css'</style></svg>",
        "logo.svg:2:2: error"
    )]
    [InlineData(
        "<!DOCTYPE svg [<!ENTITY a \"aaaa\">]>\n<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\">&a;</svg>",
        "logo.svg:1:"
    )]
    [InlineData("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\">\n<rect", "it is not a well-formed SVG")]
    [InlineData("<html/>", "logo.svg:1:2: error: The logo logo.svg cannot be drawn: an SVG begins with <svg>")]
    [InlineData("<svg xmlns=\"http://www.w3.org/2000/svg\"/>", "viewBox")]
    public void A_drawn_logo_beyond_the_vocabulary_is_flagged_with_file_line_and_column(string svg, string told)
    {
        Logo("logo.svg", svg);
        School("{logo: logo.svg}");

        Refused(told);
    }

    [Theory]
    [InlineData("../secret.svg", "is outside")]
    [InlineData("/etc/secret.svg", "is outside")]
    [InlineData("C:\\\\secret.svg", "is outside")]
    [InlineData("a/../../secret.svg", "is outside")]
    [InlineData("link.svg", "is outside")]
    [InlineData("long.png", "is 200 kB long, and a logo may have 200 kB")]
    [InlineData("nowhere.svg", "is not in the production's folder")]
    [InlineData("school.jpg", "is named neither .png nor .svg")]
    public void A_logo_outside_the_folder_or_too_long_is_flagged_where_it_is_named(string path, string reason)
    {
        File.WriteAllText(_bench.PathOf("../" + Path.GetFileName(_bench.Folder) + ".svg"), Svg + "</svg>");
        File.CreateSymbolicLink(_bench.PathOf("link.svg"), "../" + Path.GetFileName(_bench.Folder) + ".svg");
        File.WriteAllBytes(_bench.PathOf("long.png"), new byte[200_001]);
        School($"{{logo: \"{path}\"}}");

        var (status, printed, _) = _bench.Run("check", "production.yaml");

        File.Delete(_bench.PathOf("../" + Path.GetFileName(_bench.Folder) + ".svg"));
        Assert.Equal(1, status);
        Assert.Contains("[sheet/bad-picture]", printed, StringComparison.Ordinal);
        Assert.Contains(reason, printed, StringComparison.Ordinal);
        Assert.Matches(@"production\.yaml:\d+:16: error", printed);
    }

    [Fact]
    public void A_logo_in_pixels_is_beside_the_name_on_every_page_and_paper()
    {
        // Two pixels by two, in grey.
        const string Pixels = "iVBORw0KGgoAAAANSUhEUgAAAAIAAAACCAAAAABX3VL4AAAADElEQVR4nGNg+A+EAAYAAf+T0eSJAAAAAElFTkSuQmCC";
        File.WriteAllBytes(_bench.PathOf("logo.png"), Convert.FromBase64String(Pixels));
        School("{name: Pier, logo: logo.png}");

        Assert.Equal(0, _bench.Run("make", "production.yaml", "--out", "papers").Status);

        Assert.All(["index.html", "lab-order.html", "wrap-summary.html"], page =>
            Assert.Contains(
                "href=\"data:image/png;base64," + Pixels,
                File.ReadAllText(_bench.PathOf("papers/" + page)).Split("</header>")[0],
                StringComparison.Ordinal
            )
        );
        using var pdf = PdfDocument.Open(_bench.PathOf("papers/lab-order.pdf"));
        var logo = Assert.Single(pdf.GetPage(1).GetImages());
        Assert.Equal((2, 2), (logo.WidthInSamples, logo.HeightInSamples));
        Assert.InRange(logo.BoundingBox.Width / logo.BoundingBox.Height, 0.99, 1.01);
    }

    [Fact]
    public void The_sample_shows_a_drawn_logo_as_lines_and_not_as_pixels()
    {
        Assert.Equal(0, _bench.Run("make", _bench.CopyOf(Repository.Sample, "sample"), "--out", "papers").Status);

        using var pdf = PdfDocument.Open(_bench.PathOf("papers/lab-order.pdf"));
        var page = pdf.GetPage(1);
        Assert.Empty(page.GetImages());
        var inks = page.Paths.Select(p => p.FillColor?.ToRGBValues()).Distinct().ToList();
        Assert.Contains(
            (0x0f / 255.0, 0x4c / 255.0, 0x5c / 255.0),
            inks.OfType<(double R, double G, double B)>()
                .Select(c => (Math.Round(c.R * 255) / 255, Math.Round(c.G * 255) / 255, Math.Round(c.B * 255) / 255))
        );
    }

    [Fact]
    public void A_damaged_logo_in_pixels_is_flagged_where_it_is_named()
    {
        File.WriteAllBytes(_bench.PathOf("logo.png"), [0x89, .. "PNG\r\n\x1a\n"u8, 0, 0]);
        School("{logo: logo.png}");

        Refused("The logo logo.png cannot be drawn: it is cut off.");
    }

    /// <summary>Everything on a paper that is neither black nor white nor grey: rules, shapes and letters.</summary>
    HashSet<string> ColoursOf(string paper)
    {
        using var pdf = PdfDocument.Open(_bench.PathOf($"papers/{paper}.pdf"));
        return
        [
            .. from page in pdf.GetPages()
            from colour in page
                .Paths.SelectMany(p => new[] { p.IsStroked ? p.StrokeColor : null, p.IsFilled ? p.FillColor : null })
                .Concat(page.Letters.Select(l => l.Color))
            where colour is not null
            let rgb = colour.ToRGBValues()
            where rgb.r != rgb.g || rgb.g != rgb.b
            select FormattableString.Invariant(
                $"#{(int)Math.Round(rgb.r * 255):x2}{(int)Math.Round(rgb.g * 255):x2}{(int)Math.Round(rgb.b * 255):x2}"
            ),
        ];
    }

    void Style(Func<string, string> change)
    {
        Directory.CreateDirectory(_bench.PathOf("own"));
        File.WriteAllText(
            _bench.PathOf("own/style.css"),
            change(File.ReadAllText(Path.Combine(Repository.Root, "templates", "style.css")))
        );
    }

    void Refused(string told)
    {
        var (status, printed, error) = _bench.Run("make", "production.yaml", "--out", "papers");

        Assert.Equal(1, status);
        Assert.Contains(told, printed, StringComparison.Ordinal);
        Assert.Contains("[paper/logo]", printed, StringComparison.Ordinal);
        Assert.Contains("No paper was written", error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(_bench.PathOf("papers")));
    }

    void Logo(string name, string svg) => File.WriteAllText(_bench.PathOf(name), svg, new UTF8Encoding(false));

    void School(string block) =>
        File.WriteAllText(
            _production,
            File.ReadAllText(_production).Replace("spoolbook: 1\n", "spoolbook: 1\nschool: " + block + "\n", StringComparison.Ordinal)
        );
}
