using System.Text.Json.Nodes;
using Spoolbook.Acceptance.Browsing;

namespace Spoolbook.Acceptance;

/// <summary>
/// Every page as outside judges see it: valid HTML, and nothing that the guidelines for accessible pages forbid at A and AA, on a
/// telephone and on a desk, by day and by night. The page to log on has its own in <see cref="PocketLogs.PocketLooksTests"/>.
/// </summary>
[Collection(MadePages.Shared)]
public sealed class GuidelineTests(MadePages made)
{
    const string Axe = "npm:axe-core/axe.min.js";

    const string Found = """
        .then(found => found.violations.map(v => v.id + ': ' + v.nodes.map(n => n.html.slice(0, 120) + ' ' + n.failureSummary.slice(0, 160)).join(' | ')))
        """;

    // The judge walks every element of a page for every rule, and a strip has hundreds of lines, a long table the same row forty
    // times: minutes, of which nothing comes. A picture is judged by its own name, and of a table the first thirty rows.
    const string Shortened = """
        document.querySelectorAll('svg').forEach(s => s.replaceChildren(...[...s.children].filter(c => c.matches('title, desc'))));
        document.querySelectorAll('tbody').forEach(b => [...b.rows].slice(30).forEach(r => r.remove()));
        true
        """;

    // What a program can see of WCAG 2.2 at A and AA, and that a page has its parts marked.
    const string All = """
        axe.run(document, {
          runOnly: { type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] },
          rules: { 'landmark-one-main': { enabled: true }, 'region': { enabled: true } },
          resultTypes: ['violations'],
        })
        """;

    // The night changes colours and nothing else.
    const string Colours = "axe.run(document, { runOnly: ['color-contrast', 'link-in-text-block'], resultTypes: ['violations'] })";

    // What scrolls sideways and no key reaches, and what a key reaches and nobody says what it is.
    const string Unreached = """
        [...document.querySelectorAll('main *')].filter(e => {
          const style = getComputedStyle(e);
          const scrolls = /auto|scroll/.test(style.overflowX) && e.clientWidth > 0 && e.scrollWidth > e.clientWidth + 1;
          return scrolls && e.tabIndex < 0 || e.tabIndex >= 0 && !e.matches('a') && !e.getAttribute('aria-label');
        }).map(e => `${e.tagName} ${e.className}`)
        """;

    [ToolFact(Axe)]
    public async Task No_page_of_the_sample_breaks_a_guideline_for_accessible_pages()
    {
        var axe = await File.ReadAllTextAsync(Tools.FileOfPackage(Axe)!);
        await using var browser = await Chromium.Start();
        var session = await browser.NewPage();
        var pages = made.OfTheSample.ToList();
        Assert.True(pages.Count > 10, "The sample has lost most of its pages.");
        foreach (var page in pages)
        {
            foreach (var width in (int[])[390, 1280])
            {
                await browser.Ask(
                    "Emulation.setDeviceMetricsOverride",
                    new
                    {
                        width,
                        height = 800,
                        deviceScaleFactor = 1,
                        mobile = width == 390,
                    },
                    session
                );
                await browser.Open(page, session);
                Expect(await browser.Value(Unreached, session), page, $"{width} by keyboard");
                await browser.Value(axe + "; true", session);
                await browser.Value(Shortened, session);
                foreach (var (look, judged) in ((string, string)[])[("light", All), ("dark", Colours)])
                {
                    await browser.Ask(
                        "Emulation.setEmulatedMedia",
                        new { features = new[] { new { name = "prefers-color-scheme", value = look } } },
                        session
                    );
                    Expect(await browser.Promised(judged + Found, session), page, $"{width} {look}");
                }
            }
        }
    }

    [ToolFact("vnu")]
    public void Every_page_is_valid_HTML()
    {
        var (status, said) = Tools.Run("vnu", ["--errors-only", .. made.Pages]);

        Assert.True(status == 0, said);
    }

    static void Expect(JsonNode? faults, string page, string look) =>
        Assert.Empty(faults!.AsArray().Select(fault => $"{MadePages.NameOf(page)} at {look}: {fault!.GetValue<string>()}"));
}
