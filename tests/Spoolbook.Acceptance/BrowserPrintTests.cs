using System.Text.RegularExpressions;
using System.Xml.Linq;
using Spoolbook.Acceptance.Browsing;
using Spoolbook.Acceptance.Papers;
using UglyToad.PdfPig;

namespace Spoolbook.Acceptance;

/// <summary>Pages that somebody prints from a browser instead of the PDF, in two engines.</summary>
[Collection(MadePages.Shared)]
public sealed partial class BrowserPrintTests(MadePages made) : IDisposable
{
    // An A4 sheet in inches.
    const double Wide = 8.27,
        High = 11.69;

    // What has more in it than it shows, on a sheet. Drawings are scaled as a whole.
    const string CutOff = """
        [...document.querySelectorAll('body *')]
          .filter(e => !e.closest('svg') && getComputedStyle(e).overflow === 'hidden' && e.clientHeight > 0
            && (e.scrollHeight > e.clientHeight + 1 || e.scrollWidth > e.clientWidth + 1))
          .map(e => `${e.tagName} ${e.className} ${e.scrollWidth}x${e.scrollHeight} in ${e.clientWidth}x${e.clientHeight}: ${e.textContent.trim().slice(0, 40)}`)
        """;

    readonly string _folder = Directory.CreateTempSubdirectory("spoolbook-print-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [ToolFact("chromium")]
    public async Task Every_paper_printed_on_a4_from_a_browser_has_hardly_more_pages_than_its_pdf_and_loses_no_word()
    {
        await using var browser = await Chromium.Start();
        var session = await browser.NewPage();
        // Paper has none.
        await browser.Ask("Emulation.setScrollbarsHidden", new { hidden = true }, session);
        foreach (var page in made.Papers)
        {
            await browser.Open(page, session);
            var print = Path.Combine(_folder, "print.pdf");
            await File.WriteAllBytesAsync(print, await Print(browser, session, asThePageAsks: false));
            Holds(page, print, "Chromium");

            await browser.Ask("Emulation.setEmulatedMedia", new { media = "print" }, session);
            var cut = await browser.Value(CutOff, session);
            var said = string.Join("; ", cut.AsArray().Select(box => $"{MadePages.NameOf(page)}: {box!.GetValue<string>()}"));
            Assert.True(said.Length == 0, said);
            await browser.Ask("Emulation.setEmulatedMedia", new { media = "" }, session);
        }
    }

    [ToolFact("chromium")]
    public async Task A_browser_takes_the_sheet_that_the_production_prints_on()
    {
        await using var browser = await Chromium.Start();
        var session = await browser.NewPage();
        foreach (var name in (string[])["sample-production/lab-order", "passes/lab-order", "passes/can-labels"])
        {
            var page = made.Papers.Single(p => MadePages.NameOf(p) == name + ".html");
            await browser.Open(page, session);
            using var ours = PdfDocument.Open(Path.ChangeExtension(page, ".pdf"));
            using var theirs = PdfDocument.Open(await Print(browser, session, asThePageAsks: true));
            Assert.Equal(ours.GetPage(1).Width, theirs.GetPage(1).Width, 1.0);
            Assert.Equal(ours.GetPage(1).Height, theirs.GetPage(1).Height, 1.0);
        }
    }

    // Seconds a page, so the second engine has a paper of each kind, metric and German among them.
    [ToolFact("weasyprint")]
    public void A_second_engine_prints_them_likewise()
    {
        string[] names =
        [
            "sample-production/camera-report-R03",
            "sample-production/can-labels",
            "sample-production/exposure-card-B1",
            "sample-production/kit-list",
            "sample-production/lab-order",
            "sample-production/wrap-summary",
            "german/log-sheets",
            "german/lab-order",
            "metric-35mm-25/can-labels",
            "sixty-takes/camera-report-R01",
        ];
        foreach (var name in names)
        {
            var page = made.Papers.Single(p => MadePages.NameOf(p) == name + ".html");
            var print = Path.Combine(_folder, "print.pdf");
            var (status, output) = Tools.Run("weasyprint", page, print);
            Assert.True(status == 0, output);
            Holds(page, print, "WeasyPrint");
        }
    }

    static async Task<byte[]> Print(Chromium browser, string session, bool asThePageAsks)
    {
        var printed = await browser.Ask(
            "Page.printToPDF",
            new
            {
                paperWidth = Wide,
                paperHeight = High,
                preferCSSPageSize = asThePageAsks,
            },
            session
        );
        return Convert.FromBase64String(printed["data"]!.GetValue<string>());
    }

    static void Holds(string page, string print, string engine)
    {
        var name = $"{MadePages.NameOf(page)} in {engine}";
        using var pdf = PdfDocument.Open(print);
        var (ours, theirs) = (PagesOf(Path.ChangeExtension(page, ".pdf")), pdf.NumberOfPages);
        var most = name.Contains("/wrap-summary", StringComparison.Ordinal) ? ours + (ours / 2) : ours + 1;
        Assert.True(theirs <= most, $"{name}: {theirs} pages, and {ours} in our PDF");

        var texts = pdf.GetPages().Select(p => Squeezed(p.Text)).ToList();
        var article = ArticleOf(page);
        var labels = article.Descendants().Where(e => Has(e, "label")).Select(label => Squeezed(label.Value)).ToList();
        Assert.All(labels, label => Assert.True(texts.Any(t => t.Contains(label, StringComparison.Ordinal)), $"{name}: {label} is split"));
        if (labels.Count > 0)
        {
            Assert.Equal(ours, theirs);
        }

        var printed = string.Concat(texts).CountBy(letter => letter).ToDictionary();
        Assert.All(Squeezed(article.Value).CountBy(letter => letter), letter =>
            Assert.True(
                printed.GetValueOrDefault(letter.Key) >= letter.Value,
                $"{name}: '{letter.Key}' is {letter.Value} times on the page and {printed.GetValueOrDefault(letter.Key)} times on paper"
            )
        );
        Assert.All(pdf.GetPages(), p =>
            Assert.All(p.Letters.Where(l => !string.IsNullOrWhiteSpace(l.Value)), l =>
                Assert.True(l.StartBaseLine.X >= 0 && l.EndBaseLine.X <= p.Width + 0.5, $"{name}: '{l.Value}' is off the sheet")
            )
        );
    }

    static int PagesOf(string path)
    {
        using var pdf = PdfDocument.Open(path);
        return pdf.NumberOfPages;
    }

    /// <summary>What of the page is for paper, without pictures.</summary>
    static XElement ArticleOf(string page)
    {
        var html = File.ReadAllText(page);
        var article = XElement.Parse(
            html[html.IndexOf("<article", StringComparison.Ordinal)..html.IndexOf("</main>", StringComparison.Ordinal)]
        );
        article.Descendants().Where(e => e.Name.LocalName == "svg" || Has(e, "only-screen")).Remove();
        return article;
    }

    static bool Has(XElement element, string cssClass) => ((string?)element.Attribute("class") ?? "").Split(' ').Contains(cssClass);

    // A browser's own font may join letters into one, which is read as a letter of its own.
    static readonly (string Joined, string Letters)[] _joined =
    [
        ("\uFB00", "ff"),
        ("\uFB01", "fi"),
        ("\uFB02", "fl"),
        ("\uFB03", "ffi"),
        ("\uFB04", "ffl"),
    ];

    /// <summary>Letters and digits that every font has: readers differ in the others, and in what is between them.</summary>
    static string Squeezed(string text) =>
        Other()
            .Replace(
                Accents.Apart(_joined.Aggregate(text, (all, pair) => all.Replace(pair.Joined, pair.Letters, StringComparison.Ordinal))),
                ""
            );

    [GeneratedRegex(@"[^\x21-\x7e]+")]
    private static partial Regex Other();
}
