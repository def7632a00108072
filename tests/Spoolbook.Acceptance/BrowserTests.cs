using System.Text.Json.Nodes;
using System.Xml.Linq;
using Spoolbook.Acceptance.Browsing;
using Spoolbook.Acceptance.Folders;
using UglyToad.PdfPig;

namespace Spoolbook.Acceptance;

/// <summary>The page as a telephone, a screen reader and a printer get it from a browser that is not ours.</summary>
public sealed class BrowserTests : IDisposable
{
    const int Telephone = 390;

    // For each text that can be seen: how it stands out from the ground behind it, by the guidelines' reckoning.
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

    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [ToolFact("chromium")]
    public async Task The_page_of_an_ordinary_and_of_two_awkward_productions_holds_in_a_browser()
    {
        string[] productions = ["sample-production", "tests/Spoolbook.Acceptance/productions/many-alphabets", "tests/Spoolbook.Acceptance/productions/forty-rolls"];
        foreach (var production in productions)
        {
            Assert.Equal(0, _bench.Run("make", TestFolders.ProductionIn(Path.Combine(Repository.Root, production)), "--out", Path.GetFileName(production)).Status);
        }

        await using var browser = await Chromium.Start();
        foreach (var production in productions)
        {
            var page = _bench.PathOf(Path.GetFileName(production) + "/index.html");
            var session = await browser.NewPage();
            await browser.Ask("Emulation.setDeviceMetricsOverride", new { width = Telephone, height = 844, deviceScaleFactor = 2, mobile = true }, session);
            await browser.Open(page, session);

            await Nothing_is_wider_than_a_telephone(browser, session, production);
            await Every_text_stands_out(browser, session, "light");
            await Every_text_stands_out(browser, session, "dark");
            await A_screen_reader_finds_the_headings_and_the_tables(browser, session, page);
            await Paper_is_white_and_as_wide_as_paper(browser, session, page);
            Nothing_is_said_on_the_console_and_nothing_is_fetched(browser, page);
        }
    }

    [ToolFact("chromium")]
    public async Task Every_other_page_of_the_sample_fits_a_telephone_too()
    {
        _bench.Run("make", Repository.Sample, "--out", "papers");
        await using var browser = await Chromium.Start();
        var session = await browser.NewPage();
        await browser.Ask("Emulation.setDeviceMetricsOverride", new { width = Telephone, height = 844, deviceScaleFactor = 2, mobile = true }, session);
        foreach (var page in Directory.GetFiles(_bench.PathOf("papers"), "*.html").Order(StringComparer.Ordinal))
        {
            await browser.Open(page, session);
            await Nothing_is_wider_than_a_telephone(browser, session, Path.GetFileName(page));
            await Every_text_stands_out(browser, session, "dark");
            Nothing_is_said_on_the_console_and_nothing_is_fetched(browser, page);
        }
    }

    static async Task Nothing_is_wider_than_a_telephone(Chromium browser, string session, string what)
    {
        var width = (await browser.Value("document.documentElement.scrollWidth", session)).GetValue<int>();
        Assert.True(width <= Telephone, $"{what} is {width} pixels wide");
    }

    static async Task Every_text_stands_out(Chromium browser, string session, string scheme)
    {
        await browser.Ask("Emulation.setEmulatedMedia", new { media = "screen", features = new[] { new { name = "prefers-color-scheme", value = scheme } } }, session);
        var found = await browser.Value(PaleTexts, session);
        Assert.True(found["seen"]!.GetValue<int>() > 10);
        Assert.Empty(found["pale"]!.AsArray().Select(pale => scheme + ": " + pale!.GetValue<string>()));
    }

    static async Task A_screen_reader_finds_the_headings_and_the_tables(Chromium browser, string session, string page)
    {
        var nodes = (await browser.Ask("Accessibility.getFullAXTree", new { }, session))["nodes"]!.AsArray().Select(n => n!.AsObject()).ToDictionary(n => n["nodeId"]!.GetValue<string>());
        var read = InOrder(nodes, nodes.Values.First(n => n["parentId"] is null)).ToList();
        var headings = read.Where(n => Role(n) == "heading").ToList();

        var html = await File.ReadAllTextAsync(page);
        var article = XElement.Parse(html[html.IndexOf("<article", StringComparison.Ordinal)..html.IndexOf("</body>", StringComparison.Ordinal)]);
        Assert.Equal(article.Descendants().Where(e => e.Name.LocalName is "h1" or "h2" or "h3").Select(e => Folded(e.Value)), headings.Select(h => Folded(h["name"]!["value"]!.GetValue<string>())));
        var levels = headings.Select(h => h["properties"]!.AsArray().First(p => p!["name"]!.GetValue<string>() == "level")!["value"]!["value"]!.GetValue<int>()).ToList();
        Assert.Equal(1, levels[0]);
        Assert.All(levels.Zip(levels.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 1));

        var tables = read.Where(n => Role(n) == "table").ToList();
        Assert.Equal(article.Descendants().Count(e => e.Name.LocalName == "table"), tables.Count);
        Assert.All(tables, table => Assert.Contains(InOrder(nodes, table), n => Role(n) is "columnheader"));
        Assert.All(tables, table => Assert.Contains(InOrder(nodes, table), n => Role(n) is "row"));
    }

    static async Task Paper_is_white_and_as_wide_as_paper(Chromium browser, string session, string page)
    {
        await browser.Ask("Emulation.setEmulatedMedia", new { media = "print", features = new[] { new { name = "prefers-color-scheme", value = "dark" } } }, session);
        Assert.Equal("rgb(255, 255, 255)", (await browser.Value("getComputedStyle(document.body).backgroundColor", session)).GetValue<string>());
        Assert.Empty((await browser.Value(PaleTexts, session))["pale"]!.AsArray().Select(pale => "print: " + pale!.GetValue<string>()));
        var printed = await browser.Ask("Page.printToPDF", new { paperWidth = 8.27, paperHeight = 11.69 }, session);
        using var pdf = PdfDocument.Open(Convert.FromBase64String(printed["data"]!.GetValue<string>()));
        var words = pdf.GetPages().SelectMany(p => p.GetWords().Select(w => (w.Text, w.BoundingBox.Right, p.Width))).ToList();
        Assert.All(words, word => Assert.True(word.Right <= word.Width, $"{word.Text} is cut off"));
        Assert.True(words.Count > 50);
        Assert.NotEmpty(await File.ReadAllTextAsync(page));
    }

    static void Nothing_is_said_on_the_console_and_nothing_is_fetched(Chromium browser, string page)
    {
        Assert.Empty(browser.Events.Where(e => Method(e) is "Runtime.consoleAPICalled" or "Runtime.exceptionThrown" or "Log.entryAdded").Select(e => e.ToJsonString()));
        Assert.Equal([new Uri(page).AbsoluteUri], browser.Events.Where(e => Method(e) == "Network.requestWillBeSent").Select(e => e["params"]!["request"]!["url"]!.GetValue<string>()));
    }

    static string Method(JsonObject told) => told["method"]!.GetValue<string>();

    static string? Role(JsonObject node) => node["role"]?["value"]?.GetValue<string>();

    static string Folded(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    static IEnumerable<JsonObject> InOrder(Dictionary<string, JsonObject> nodes, JsonObject node) =>
        [node, .. (node["childIds"]?.AsArray() ?? []).SelectMany(id => nodes.TryGetValue(id!.GetValue<string>(), out var child) ? InOrder(nodes, child) : [])];
}
