using System.Text.Json.Nodes;

namespace Spoolbook.Acceptance.PocketLogs;

/// <summary>
/// Every screen of the pocket log as outside judges see it, on three widths, by day and by night: a glove hits every
/// key, a page in the sun is read, a screen reader finds its way, and nothing is cut off.
/// </summary>
public sealed class PocketLooksTests(MadeSample sample) : IClassFixture<MadeSample>, IDisposable
{
    const string Axe = "npm:axe-core/axe.min.js";

    const string ADay = """
        (() => {
          const tell = (verb, more) => Page.keep({ ...Page.stamp(), verb, roll: 'R07', ...more });
          tell('load', { lot: 'N250-A', unit: '4', body: 'B1', by: 'ines', light: 'subdued', head: '4+00', ready: ['gate'], speedAfter: '24' });
          Store.state.roll = 'R07';
          Store.state.who = 'ines';
          const take = { scene: '1', shot: 'A', speed: '24', lens: '25mm', stop: '8/11', filter: ['ND3', 'PL'], focus: '5ft6in' };
          tell('take', { ...take, number: 5, to: '14+12', mark: 'G' });
          tell('wind');
          tell('take', { ...take, number: 6, to: '40+00', mark: 'NG', remark: 'The heron went up before anybody had seen it, and the dog after it' });
          tell('run-off', { to: '45+00', lens: 'capped' });
          tell('take', { ...take, number: 7, to: '52+00', mark: 'H', struck: true });
          Store.state.take = { ...Store.state.take, ...take, shutter: 'half', motor: 'E1', wound: true, to: '95' };
          Page.draw();
        })()
        """;

    // How to come to each screen: the calls that its buttons make.
    static readonly (string Name, string Way)[] Screens =
    [
        ("no roll", ""),
        ("roll", ADay + "; Page.go('roll')"),
        ("take", "Page.go('take')"),
        ("correcting", "Page.act.entry.call(Page, '2')"),
        ("more of a correction", "Page.go('more')"),
        ("log", "Page.act.leave.call(Page)"),
        ("more", "Page.go('more')"),
        ("hand over", "Page.go('over')"),
        ("clear", "Page.act.clear.call(Page)"),
        ("help", "Page.act.go.call(Page, 'help')"),
        ("not kept", "Store.failed = new Error('full'); Page.go('take')"),
        .. ((string[])["load", "unload", "rewind", "run-off", "fog", "reload", "note"]).Select(verb =>
            (verb, $"Page.go('more'); Page.act.form.call(Page, '{verb}')")
        ),
        ("stock", "Page.act.form.call(Page, 'load'); Page.act.choose.call(Page, 'stock')"),
        ("head", "Page.go('form'); Page.act.choose.call(Page, 'head')"),
        ("body", "Page.go('form'); Page.act.choose.call(Page, 'body')"),
        .. ((string[])["who", "slate", "lens", "stop", "reading", "filter", "speed", "focus", "remark", "shutter", "motor"]).Select(what =>
            (what, $"Page.go('take'); Page.act.choose.call(Page, '{what}')")
        ),
    ];

    // Small, cut off, pale: what a glove misses, what does not fit, what the sun wipes out (WCAG 2.2, 1.4.6 asks 7 to 1).
    const string Faults = """
        (() => {
          const faults = [];
          const shown = e => e.getClientRects().length && getComputedStyle(e).visibility !== 'hidden';
          for (const e of document.querySelectorAll('button, input, textarea, a')) {
            const box = (e.matches('input[type=checkbox], input[type=radio]') ? e.closest('label') : e).getBoundingClientRect();
            if (shown(e) && (box.width < 48 || box.height < 48)) faults.push(`small: ${e.id} ${box.width.toFixed(1)} × ${box.height.toFixed(1)}`);
          }
          for (const e of document.querySelectorAll('body *')) {
            const box = e.getBoundingClientRect();
            if (shown(e) && box.width && getComputedStyle(e).clipPath === 'none' && (box.right > innerWidth + .5 || box.left < -.5)) faults.push(`wide: ${e.tagName} ${e.id} ${e.textContent.slice(0, 40)}`);
            if (shown(e) && e.matches('button, label, h2, p, dd') && getComputedStyle(e).clipPath === 'none' && e.scrollWidth > e.clientWidth + 1 && getComputedStyle(e).display !== 'inline' && !e.matches('#who, .chip')) faults.push(`cut: ${e.tagName} ${e.id} ${e.textContent.slice(0, 40)}`);
          }
          const channels = c => (c.match(/[\d.]+/g) || []).map(Number);
          const linear = v => (v /= 255) <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4;
          const luminance = c => 0.2126 * linear(c[0]) + 0.7152 * linear(c[1]) + 0.0722 * linear(c[2]);
          const ground = e => {
            for (; e; e = e.parentElement) {
              const c = channels(getComputedStyle(e).backgroundColor);
              if (c.length === 3 || c[3] > 0) return c;
            }
            return [255, 255, 255];
          };
          const inked = [...document.querySelectorAll('input, textarea')].filter(shown).map(e => [e, e.value]);
          const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
          while (texts.nextNode()) {
            const e = texts.currentNode.parentElement;
            if (texts.currentNode.nodeValue.trim() && shown(e) && !e.closest('script, noscript')) inked.push([e, texts.currentNode.nodeValue.trim()]);
          }
          for (const [e, text] of inked) {
            const [a, b] = [luminance(channels(getComputedStyle(e).color)), luminance(ground(e))].sort((x, y) => y - x);
            const ratio = (a + 0.05) / (b + 0.05);
            if (ratio < 7) faults.push(`pale: ${text.slice(0, 40)} ${ratio.toFixed(2)}`);
          }
          if (inked.length < 8) faults.push('nothing on it');
          const ids = [...document.querySelectorAll('[id]')].map(e => e.id);
          faults.push(...ids.filter((id, i) => ids.indexOf(id) !== i).map(id => `twice: ${id}`));
          const red = channels(getComputedStyle(document.body).backgroundColor);
          if (matchMedia('(prefers-color-scheme: dark)').matches && luminance(red) > .02) faults.push('bright at night');
          return faults;
        })()
        """;

    // What the guidelines ask at any level that a page can be held to by a program, and good practice.
    const string Judged = """
        axe.run(document, {
          runOnly: { type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] },
          rules: { 'color-contrast-enhanced': { enabled: true }, 'target-size': { enabled: true } },
          resultTypes: ['violations'],
        }).then(found => found.violations.map(v => v.id + ': ' + v.nodes.map(n => n.html.slice(0, 120) + ' ' + n.failureSummary.slice(0, 160)).join(' | ')))
        """;

    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [ToolFact("chromium")]
    public async Task A_glove_hits_every_key_and_every_word_is_read_in_the_sun_and_at_night() =>
        await OnEveryScreen(async (telephone, screen, look, width) => Expect(await telephone.Ask(Faults), screen, look, width));

    [ToolFact(Axe)]
    public async Task No_screen_breaks_a_guideline_for_accessible_pages()
    {
        var axe = await File.ReadAllTextAsync(Tools.FileOfPackage(Axe)!);
        await OnEveryScreen(
            async (telephone, screen, look, width) => Expect(await telephone.Ask(Judged), screen, look, width),
            telephone => telephone.Ask(axe + "; true")
        );
    }

    [ToolFact("vnu")]
    public async Task The_page_and_every_screen_of_it_are_valid_HTML()
    {
        var files = new List<string> { sample.PathOf("pocket-log.html") };
        await using var telephone = await Telephone.With(sample.PathOf("pocket-log.html"));
        foreach (var (name, way) in Screens)
        {
            await telephone.Ask(way + "; Page.draw()");
            var file = _bench.PathOf(name.Replace(' ', '-') + ".html");
            var page = await telephone.Ask("'<!DOCTYPE html>' + document.documentElement.outerHTML");
            await File.WriteAllTextAsync(file, page.GetValue<string>());
            files.Add(file);
        }

        var (status, said) = Tools.Run("vnu", ["--errors-only", .. files]);
        Assert.True(status == 0, said);
    }

    async Task OnEveryScreen(Func<Telephone, string, string, int, Task> judge, Func<Telephone, Task>? before = null)
    {
        await using var telephone = await Telephone.With(sample.PathOf("pocket-log.html"));
        if (before is not null)
        {
            await before(telephone);
        }

        foreach (var (name, way) in Screens)
        {
            await telephone.Ask(way + "; Page.draw()");
            foreach (var look in (string[])["light", "dark"])
            {
                await telephone.Look(look);
                foreach (var width in (int[])[360, 390, 768])
                {
                    await telephone.Wide(width);
                    await judge(telephone, name, look, width);
                }
            }
        }

        Assert.Empty(telephone.Complaints);
    }

    static void Expect(JsonNode faults, string screen, string look, int width) =>
        Assert.Empty(faults.AsArray().Select(fault => $"{screen}, {look}, {width}: {fault!.GetValue<string>()}"));
}
