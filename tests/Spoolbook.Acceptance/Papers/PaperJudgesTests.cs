using System.Text.RegularExpressions;
using System.Xml;
using System.Xml.Linq;
using Spoolbook.Acceptance.Snapshots;
using Spoolbook.Papers.Tests.Typesetting;
using UglyToad.PdfPig;

namespace Spoolbook.Acceptance.Papers;

/// <summary>Every paper of four productions, checked by outside judges.</summary>
public sealed partial class PaperJudgesTests(MadePapers made) : IClassFixture<MadePapers>
{
    const string Preflight = "/usr/share/java/preflight.jar";

    [ToolFact(Preflight)]
    public void Every_paper_is_fit_for_an_archive()
    {
        string[] jars = ["preflight", "pdfbox2", "xmpbox", "fontbox2", "commons-logging", "commons-io", "jaxb-api", "javax.activation"];
        var all = Path.Combine(made.Folder, "all");
        Directory.CreateDirectory(all);
        foreach (var pdf in made.Pdfs)
        {
            File.Copy(pdf, Path.Combine(all, made.NameOf(pdf).Replace('/', '+')), overwrite: true);
        }

        var path = string.Join(':', jars.Select(jar => $"/usr/share/java/{jar}.jar"));

        var (_, output) = Tools.Run("java", "-cp", path, "org.apache.pdfbox.preflight.Validator_A1b", "batch", all);
        var judged = Directory.GetFiles(all).Length;
        Directory.Delete(all, recursive: true);

        Assert.Equal(judged, Valid().Count(output));
        Assert.DoesNotContain("is not a valid", output, StringComparison.Ordinal);
    }

    [ToolFact("qpdf")]
    public void Qpdf_finds_nothing_wrong_in_any_paper() => Assert.All(made.Pdfs, pdf =>
        {
            var (status, output) = Tools.Run("qpdf", "--check", pdf);
            Assert.True(status == 0 && !output.Contains("WARNING", StringComparison.Ordinal), $"{made.NameOf(pdf)}: {output}");
        });

    [ToolFact("pdffonts")]
    public void Every_font_of_every_paper_is_embedded_subset_and_leads_back_to_text() => Assert.All(made.Pdfs, pdf =>
        {
            var fonts = Tools.Run("pdffonts", pdf).Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(2).ToList();
            Assert.NotEmpty(fonts);
            Assert.All(fonts, font => Assert.Matches(@"CID TrueType\s+Identity-H\s+yes yes yes", font));
        });

    [Fact]
    public void Every_paper_holds_the_points_of_universal_access() => Assert.All(made.Pdfs, file =>
        {
            using var pdf = PdfDocument.Open(file);
            var tags = new TaggedPdf(pdf);
            Assert.All(UniversalAccess.Points, point =>
                Assert.True(
                    !point.Faults(pdf, tags).Any(),
                    $"{made.NameOf(file)}, {point.Clause} {point.Point}: {string.Join("; ", point.Faults(pdf, tags).Take(3))}"
                )
            );
        });

    [Fact]
    public void Headings_of_every_page_begin_at_the_first_level_skip_none_and_are_the_same_on_paper() => Assert.All(made.Pages, page =>
        {
            var levels = Tree(page).Descendants().Select(e => e.Name.LocalName).Where(IsHeading).Select(Level).ToList();
            Assert.True(
                levels is [1, ..] && levels.Zip(levels.Skip(1)).All(pair => pair.Second <= pair.First + 1),
                $"{made.NameOf(page)}: {string.Join(' ', levels)}"
            );
            if (!File.Exists(Path.ChangeExtension(page, ".pdf")))
            {
                return;
            }

            using var pdf = PdfDocument.Open(Path.ChangeExtension(page, ".pdf"));
            Assert.Equal(levels, new TaggedPdf(pdf).Elements().Select(TaggedPdf.Tag).Where(IsHeading).Select(Level));
        });

    static bool IsHeading(string name) => name is ['h' or 'H', >= '1' and <= '6'];

    static int Level(string heading) => heading[1] - '0';

    [Fact]
    public void A_roll_of_the_sample_has_its_report_on_one_page() =>
        Assert.All(
            made.Pdfs.Where(file => made.NameOf(file).StartsWith("sample-production/camera-report", StringComparison.Ordinal)),
            file =>
            {
                using var pdf = PdfDocument.Open(file);
                Assert.True(pdf.NumberOfPages == 1, made.NameOf(file));
            }
        );

    [Fact]
    public void A_pocket_card_is_one_small_page() =>
        Assert.All(made.Pdfs.Where(file => file.EndsWith("-pocket.pdf", StringComparison.Ordinal)), file =>
        {
            using var pdf = PdfDocument.Open(file);
            Assert.True(pdf.NumberOfPages == 1, made.NameOf(file));
        });

    [Theory]
    [InlineData("sample-production", 2)]
    [InlineData("forty-rolls", 2)]
    [InlineData("passes", 1)]
    public void A_lab_order_runs_no_longer_than_its_cans_ask_for(string production, int pages)
    {
        using var pdf = PdfDocument.Open(Path.Combine(made.Folder, production, "lab-order.pdf"));
        Assert.Equal(pages, pdf.NumberOfPages);
    }

    [Fact]
    public void A_roll_of_five_passes_has_its_effects_and_its_signatures_on_one_sheet()
    {
        var page = Assert.Single(Pages.TextOf(Path.Combine(made.Folder, "passes/camera-report-W1.pdf")));
        Assert.Contains("exp. 2", page, StringComparison.Ordinal);
        Assert.Contains("2B/1 → 2C/1", page, StringComparison.Ordinal);
        Assert.Contains("Received by the lab", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shoot_without_any_price_has_an_open_cost_and_not_one_of_nothing()
    {
        var summary = string.Join(' ', Pages.TextOf(Path.Combine(made.Folder, "many-alphabets/wrap-summary.pdf")));
        Assert.Matches("Stock bought, orders sent.* open", summary);
        Assert.DoesNotContain("0.00", summary.Replace("0.00 m", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void A_day_has_one_line_with_its_place_and_all_its_film()
    {
        var summary = string.Join(' ', Pages.TextOf(Path.Combine(made.Folder, "sample-production/wrap-summary.pdf")));
        // The sample is invented, so this is what its log of that day says; the ledger's sums are compared with LibreOffice's.
        Assert.Contains(
            "1 Fri 2 Oct 2026 23 200+00 161+12 80+26 41+04 25+38 13+24 38+28 638+28 2:14 2.0 : 1",
            summary,
            StringComparison.Ordinal
        );
        Assert.Equal(2, summary.Split("Sat 3 Oct 2026").Length);
    }

    [Fact]
    public void An_order_without_any_rate_asks_for_prices_and_adds_nothing_up()
    {
        var order = Assert.Single(Pages.TextOf(Path.Combine(made.Folder, "passes/lab-order.pdf")));
        Assert.Contains(
            "To be priced: Process Black-and-white reversal, 154 ft; Prep, 2 rolls; Scan, 154 ft; Shipping, 1 box.",
            order,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("0.00", order, StringComparison.Ordinal);
    }

    [Fact]
    public void A_screen_reader_reads_the_page_in_its_order() => Assert.All(made.Pdfs.Where(HasPage), file =>
        {
            using var pdf = PdfDocument.Open(file);
            Same(file, Article(file), Letters(new TaggedPdf(pdf).Read()));
        });

    // Poppler takes seconds for the tree of a long paper; these are short, and have every kind of letter.
    static readonly string[] _short =
    [
        "many-alphabets/camera-report-1-00171689.pdf",
        "many-alphabets/lab-order.pdf",
        "many-alphabets/exposure-card-1-0000be11.pdf",
        "sample-production/exposure-card-B1.pdf",
    ];

    [ToolFact("pdfinfo")]
    public void Poppler_reads_the_same_in_the_same_order() =>
        Assert.All(_short.Select(name => Path.Combine(made.Folder, name)), file =>
            Same(file, Article(file), Letters(Spoken(Tools.Run("pdfinfo", "-struct-text", file).Output)))
        );

    [ToolTheory("pdfinfo")]
    [InlineData("one-take-and-ninety/camera-report-R1.pdf")]
    [InlineData("one-take-and-ninety/can-labels.pdf")]
    public void The_structure_is_as_it_was_accepted(string paper) =>
        TextSnapshot.Matches(
            Path.Combine(Repository.Root, "tests", "Spoolbook.Acceptance", "Papers", "structure"),
            Path.GetFileNameWithoutExtension(paper),
            StructureDump.InShort(Tools.Run("pdfinfo", "-struct", Path.Combine(made.Folder, paper)).Output)
        );

    [ToolFact("pdftotext")]
    public void No_letter_of_a_page_is_lost_on_paper() => Assert.All(made.Pdfs.Where(HasPage), file =>
        {
            var drawn = Counted(Letters(Tools.Run("pdftotext", file, "-").Output));
            // The judge joins a word again that is broken at its hyphen.
            Assert.All(Counted(Article(file)).Where(letter => letter.Key != '-'), letter =>
                Assert.True(
                    drawn.GetValueOrDefault(letter.Key) >= letter.Value,
                    $"{made.NameOf(file)}: '{letter.Key}' stands {letter.Value} times on the page and "
                        + $"{drawn.GetValueOrDefault(letter.Key)} times on paper"
                )
            );
        });

    /// <summary>The page that the paper was printed from, beside it; a pocket card has no page of its own.</summary>
    static bool HasPage(string pdf) => File.Exists(Path.ChangeExtension(pdf, ".html"));

    void Same(string file, string page, string paper)
    {
        var at = page.Zip(paper).TakeWhile(pair => pair.First == pair.Second).Count();
        Assert.True(
            page == paper,
            $"{made.NameOf(file)}: after '{page[Math.Max(0, at - 30)..at]}' stands '{page[at..Math.Min(page.Length, at + 30)]}' on the "
                + $"page and '{paper[at..Math.Min(paper.Length, at + 30)]}' on paper"
        );
    }

    /// <summary>The letters of the page that are for paper, without pictures, which have their own words.</summary>
    static string Article(string pdf)
    {
        var article = Tree(Path.ChangeExtension(pdf, ".html"));
        article
            .Descendants()
            .Where(e => e.Name.LocalName == "svg" || ((string?)e.Attribute("class") ?? "").Split(' ').Contains("only-screen"))
            .Remove();
        return Letters(article.Value);
    }

    static XElement Tree(string page)
    {
        var html = File.ReadAllText(page);
        html = html[
            html.IndexOf("<article", StringComparison.Ordinal)..(
                html.LastIndexOf("</article>", StringComparison.Ordinal) + "</article>".Length
            )
        ];
        return XElement.Load(XmlReader.Create(new StringReader(html)));
    }

    /// <summary>Letters only: line breaks are up to the page, and bullets and formatting marks are not letters.</summary>
    static string Letters(string text) => NotALetter().Replace(Accents.Apart(text), "");

    /// <summary>How often each letter and each accent is there, counted apart: readers differ in how they join them.</summary>
    static Dictionary<char, int> Counted(string text) => text.CountBy(letter => letter).ToDictionary();

    /// <summary>What poppler prints in quotation marks, without list marks and the words on pictures.</summary>
    static string Spoken(string tree)
    {
        var said = new List<string>();
        var closed = int.MaxValue;
        foreach (var line in tree.Split('\n'))
        {
            var depth = line.Length - line.TrimStart().Length;
            if (depth <= closed)
            {
                closed = int.MaxValue;
            }

            var text = line.Trim();
            if (closed == int.MaxValue && (text.StartsWith("Figure", StringComparison.Ordinal)))
            {
                closed = depth;
            }
            else if (closed == int.MaxValue && text.Length >= 2 && text[0] == '"' && text[^1] == '"')
            {
                said.Add(text[1..^1]);
            }
        }

        return string.Concat(said);
    }

    [GeneratedRegex(@"is a valid PDF/A-1b file")]
    private static partial Regex Valid();

    [GeneratedRegex(@"[\s\p{Cf}•]+")]
    private static partial Regex NotALetter();
}
