using System.Text.Json.Nodes;
using System.Xml.Linq;
using Spoolbook.Acceptance.Browsing;
using UglyToad.PdfPig;

namespace Spoolbook.Acceptance;

/// <summary>The page as an outside browser shows it on a phone, to a screen reader and on a printer.</summary>
[Collection(MadePages.Shared)]
public sealed class BrowserTests(MadePages made)
{
    const int Telephone = 390;

    // A desk's screen, where whatever is wider than the page is off it too.
    const int Desk = 1280;

    // A page must work down to that width by the guidelines for accessible pages (WCAG 2.2, 1.4.10).
    const int Narrowest = 320;

    // Every box that reaches beyond the screen or has more in it than it shows. The exceptions: the inside of a
    // drawing, which is cut at its frame and scaled as a whole; and what is clipped away but kept for screen readers.
    const string TooWide = """
        (() => {
          const wide = [];
          for (const e of document.querySelectorAll('html, body, body *')) {
            const style = getComputedStyle(e);
            if (e.parentElement?.closest('svg') || e.closest('thead') && getComputedStyle(e.closest('thead')).clipPath !== 'none' || style.clipPath !== 'none') continue;
            const box = e.getBoundingClientRect();
            const scrolls = style.display !== 'inline' && e.clientWidth > 0 && e.scrollWidth > e.clientWidth + 1;
            if (box.width > 0 && (box.right > innerWidth + .5 || box.left < -.5) || scrolls) wide.push(`${e.tagName} ${e.className} ${e.scrollWidth} of ${e.clientWidth}: ${e.textContent.trim().slice(0, 40)}`);
          }
          return wide;
        })()
        """;

    // For each visible text, its contrast with the background, by the guidelines' formula.
    const string PaleTexts = """
        (() => {
          const channels = c => (c.match(/[\d.]+/g) || []).map(Number);
          const linear = v => (v /= 255) <= 0.03928 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4;
          const luminance = c => 0.2126 * linear(c[0]) + 0.7152 * linear(c[1]) + 0.0722 * linear(c[2]);
          const ground = e => {
            for (; e; e = e.parentElement) {
              const c = channels(getComputedStyle(e).backgroundColor);
              if (c.length === 3 || c[3] > 0) return c;
            }
            return [255, 255, 255];
          };
          const pale = [];
          const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
          let seen = 0;
          while (texts.nextNode()) {
            const element = texts.currentNode.parentElement;
            if (!texts.currentNode.nodeValue.trim() || !element.getClientRects().length || element.closest('title, desc')) continue;
            seen++;
            const style = getComputedStyle(element);
            const picture = element.closest('svg');
            const ink = channels(picture ? style.fill : style.color), behind = ground(picture || element);
            const [a, b] = [luminance(ink), luminance(behind)].sort((x, y) => y - x);
            const ratio = (a + 0.05) / (b + 0.05), size = parseFloat(style.fontSize);
            const large = size >= 24 || size >= 18.66 && style.fontWeight >= 700;
            if (!picture && ratio < (large ? 3 : 4.5) || picture && ratio < 4.5 && ratio > 1.2) pale.push(`${texts.currentNode.nodeValue.trim()}: ${style.color} on ${behind}: ${ratio.toFixed(2)}`);
          }
          return { seen, pale };
        })()
        """;

    [ToolFact("chromium")]
    public async Task The_page_of_an_ordinary_and_of_two_awkward_productions_holds_in_a_browser()
    {
        await using var browser = await Chromium.Start();
        foreach (var production in (string[])["sample-production", "many-alphabets", "forty-rolls"])
        {
            var page = made.IndexOf(production);
            var session = await OnATelephone(browser);
            await browser.Open(page, session);

            await Every_text_stands_out(browser, session, "light");
            await Every_text_stands_out(browser, session, "dark");
            await A_screen_reader_finds_the_headings_and_the_tables(browser, session, page);
            await Paper_is_white_and_as_wide_as_paper(browser, session, page);
            The_browser_console_stays_empty_and_nothing_is_fetched(browser, page);
        }
    }

    [ToolFact("chromium")]
    public async Task No_page_of_any_production_is_moved_sideways_on_a_telephone_or_a_desk()
    {
        await using var browser = await Chromium.Start();
        var session = await OnATelephone(browser);
        Assert.True(made.Pages.Count > 80);
        foreach (var page in made.Pages)
        {
            await browser.Open(page, session);
            foreach (var width in (int[])[Narrowest, Telephone, Desk])
            {
                await Narrow(browser, session, width);
                var wide = await browser.Value(TooWide, session);
                Assert.Empty(wide.AsArray().Select(box => $"{MadePages.NameOf(page)} at {width}: {box!.GetValue<string>()}"));
            }

            The_browser_console_stays_empty_and_nothing_is_fetched(browser, page);
        }
    }

    [ToolFact("chromium")]
    public async Task Every_other_page_of_the_sample_is_seen_and_read_out_on_a_telephone_too()
    {
        await using var browser = await Chromium.Start();
        var session = await OnATelephone(browser);
        foreach (var page in made.Pages.Where(page => MadePages.NameOf(page).StartsWith("sample-production/", StringComparison.Ordinal)))
        {
            await browser.Open(page, session);
            await Every_text_stands_out(browser, session, "dark");
            await A_screen_reader_finds_the_headings_and_the_tables(browser, session, page);
        }
    }

    [Fact]
    public void Every_link_of_the_page_leads_to_a_place_on_it_or_to_a_paper_beside_it() =>
        Assert.All((string[])["sample-production", "many-alphabets", "forty-rolls", "hand-held-one-roll"], production =>
        {
            var page = made.IndexOf(production);
            var article = ArticleOf(File.ReadAllText(page));
            var places = article.Descendants().Select(e => (string?)e.Attribute("id")).OfType<string>().ToList();
            Assert.Equal(places.Distinct(), places);
            var links = article.Descendants().Where(e => e.Name.LocalName == "a").Select(a => (string)a.Attribute("href")!).ToList();
            Assert.All(links.Where(link => link.StartsWith('#')), link => Assert.Contains(link[1..], places));
            Assert.All(links.Where(link => !link.StartsWith('#')), link =>
                Assert.True(File.Exists(Path.Combine(Path.GetDirectoryName(page)!, link.Split('#')[0])), link)
            );
            // A camera report for each roll, and for many of them a link to each one's strip.
            var strips = places.Where(place => place.StartsWith("strip-", StringComparison.Ordinal)).ToList();
            Assert.NotEmpty(strips);
            Assert.All(strips, strip => Assert.Contains("camera-report" + strip[5..] + ".html", links));
            Assert.All(strips, strip => Assert.Equal(strips.Count > 4, links.Contains("#" + strip)));
        });

    static XElement ArticleOf(string html) =>
        XElement.Parse(html[html.IndexOf("<article", StringComparison.Ordinal)..html.IndexOf("</main>", StringComparison.Ordinal)]);

    static async Task<string> OnATelephone(Chromium browser)
    {
        var session = await browser.NewPage();
        await Narrow(browser, session, Telephone);
        return session;
    }

    static async Task Narrow(Chromium browser, string session, int width) =>
        await browser.Ask(
            "Emulation.setDeviceMetricsOverride",
            new
            {
                width,
                height = 844,
                deviceScaleFactor = 2,
                mobile = true,
            },
            session
        );

    static async Task Every_text_stands_out(Chromium browser, string session, string scheme)
    {
        await browser.Ask(
            "Emulation.setEmulatedMedia",
            new { media = "screen", features = new[] { new { name = "prefers-color-scheme", value = scheme } } },
            session
        );
        var found = await browser.Value(PaleTexts, session);
        Assert.True(found["seen"]!.GetValue<int>() > 10);
        Assert.Empty(found["pale"]!.AsArray().Select(pale => scheme + ": " + pale!.GetValue<string>()));
    }

    static async Task A_screen_reader_finds_the_headings_and_the_tables(Chromium browser, string session, string page)
    {
        await browser.Ask("Accessibility.enable", new { }, session);
        var nodes = (await browser.Ask("Accessibility.getFullAXTree", new { }, session))["nodes"]!
            .AsArray()
            .Select(n => n!.AsObject())
            .ToDictionary(n => n["nodeId"]!.GetValue<string>());
        await browser.Ask("Accessibility.disable", new { }, session);
        var read = InOrder(nodes, nodes.Values.First(n => n["parentId"] is null)).ToList();
        var headings = read.Where(n => Role(n) == "heading").ToList();

        var html = await File.ReadAllTextAsync(page);
        var article = ArticleOf(html);
        Assert.Equal(
            article.Descendants().Where(e => e.Name.LocalName is "h1" or "h2" or "h3").Select(e => Folded(Spoken(e))),
            headings.Select(h => Folded(h["name"]!["value"]!.GetValue<string>()))
        );
        var levels = headings
            .Select(h =>
                h["properties"]!.AsArray().First(p => p!["name"]!.GetValue<string>() == "level")!["value"]!["value"]!.GetValue<int>()
            )
            .ToList();
        Assert.Equal(1, levels[0]);
        Assert.All(levels.Zip(levels.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 1));

        var tables = read.Where(n => Role(n) == "table").ToList();
        Assert.Equal(article.Descendants().Count(e => e.Name.LocalName == "table"), tables.Count);
        foreach (var (written, heard) in article.Descendants().Where(e => e.Name.LocalName == "table").Zip(tables))
        {
            var roles = InOrder(nodes, heard).Select(Role).ToList();
            Assert.Equal(Count(written, "tr"), roles.Count(r => r is "row"));
            Assert.Equal(Count(written, "td"), roles.Count(r => r is "cell" or "gridcell"));
            Assert.Equal(Count(written, "th"), roles.Count(r => r is "columnheader" or "rowheader"));
            Assert.Contains("columnheader", roles);
        }
    }

    static async Task Paper_is_white_and_as_wide_as_paper(Chromium browser, string session, string page)
    {
        await browser.Ask(
            "Emulation.setEmulatedMedia",
            new { media = "print", features = new[] { new { name = "prefers-color-scheme", value = "dark" } } },
            session
        );
        Assert.Equal(
            "rgb(255, 255, 255)",
            (await browser.Value("getComputedStyle(document.body).backgroundColor", session)).GetValue<string>()
        );
        Assert.Empty((await browser.Value(PaleTexts, session))["pale"]!.AsArray().Select(pale => "print: " + pale!.GetValue<string>()));
        var printed = await browser.Ask("Page.printToPDF", new { paperWidth = 8.27, paperHeight = 11.69 }, session);
        using var pdf = PdfDocument.Open(Convert.FromBase64String(printed["data"]!.GetValue<string>()));
        var words = pdf.GetPages().SelectMany(p => p.GetWords().Select(w => (w.Text, w.BoundingBox.Right, p.Width))).ToList();
        Assert.All(words, word => Assert.True(word.Right <= word.Width, $"{word.Text} is cut off"));
        Assert.True(words.Count > 50);
        Assert.NotEmpty(await File.ReadAllTextAsync(page));
    }

    static void The_browser_console_stays_empty_and_nothing_is_fetched(Chromium browser, string page)
    {
        Assert.Empty(
            browser
                .Events.Where(e => Method(e) is "Runtime.consoleAPICalled" or "Runtime.exceptionThrown" or "Log.entryAdded")
                .Select(e => e.ToJsonString())
        );
        Assert.Equal(
            [new Uri(page).AbsoluteUri],
            browser
                .Events.Where(e => Method(e) == "Network.requestWillBeSent")
                .Select(e => e["params"]!["request"]!["url"]!.GetValue<string>())
        );
    }

    static int Count(XElement table, string name) => table.Descendants().Count(e => e.Name.LocalName == name);

    static string Method(JsonObject told) => told["method"]!.GetValue<string>();

    static string? Role(JsonObject node) => node["role"]?["value"]?.GetValue<string>();

    // A line break is a pause.
    static string Spoken(XElement element) =>
        string.Concat(
            element
                .DescendantNodes()
                .Select(n =>
                    n is XText text ? text.Value
                    : n is XElement { Name.LocalName: "br" } ? " "
                    : ""
                )
        );

    static string Folded(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    static IEnumerable<JsonObject> InOrder(Dictionary<string, JsonObject> nodes, JsonObject node) =>
        [
            node,
            .. (node["childIds"]?.AsArray() ?? []).SelectMany(id =>
                nodes.TryGetValue(id!.GetValue<string>(), out var child) ? InOrder(nodes, child) : []
            ),
        ];
}
