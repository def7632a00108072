using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Spoolbook.Acceptance.Browsing;

namespace Spoolbook.Acceptance.PocketLogs;

/// <summary>
/// A telephone with the pocket log on it, and a thumb. Its clock reads what the test says, and its two characters are K3.
/// </summary>
internal sealed class Telephone : IAsyncDisposable
{
    // The clock stays where it is put. The two numbers are what K and 3 are drawn by.
    const string Fixed = """
        globalThis.clock = '2026-10-05T09:00:00Z';
        const RealDate = Date;
        globalThis.Date = class extends RealDate { constructor(...at) { super(...(at.length ? at : [globalThis.clock])); } };
        crypto.getRandomValues = bytes => { bytes.set([9, 1]); return bytes; };
        """;

    const string Place = """
        (selector => {
          const found = [...document.querySelectorAll(selector)].filter(e => e.getClientRects().length);
          if (found.length !== 1) { return `${found.length} of ${selector}`; }
          found[0].scrollIntoView({ block: 'center' });
          const box = found[0].getBoundingClientRect();
          const [x, y] = [box.left + box.width / 2, box.top + box.height / 2];
          const hit = document.elementFromPoint(x, y);
          return found[0].contains(hit) ? [x, y] : `${selector} is under ${hit?.outerHTML}`;
        })
        """;

    readonly Chromium _browser;
    readonly string _page;
    readonly string _before;
    string _session = "";

    Telephone(Chromium browser, string page, string before) => (_browser, _page, _before) = (browser, page, before);

    /// <summary>How often the screen was tapped since the test last set it to zero.</summary>
    public int Taps { get; set; }

    /// <summary>The lines that the page would hand over.</summary>
    public async Task<string> Lines() => (await Ask("Page.lines()")).GetValue<string>();

    /// <summary>What the page said last.</summary>
    public async Task<string> Answer() => await Text("#answer");

    /// <summary>What the page warns of, and goes on warning of.</summary>
    public async Task<string> Warning() => await Text("#warning");

    /// <summary>Every address that was asked for since the page was opened.</summary>
    public IEnumerable<string> Requests =>
        from e in _browser.Events
        where e["method"]!.GetValue<string>() == "Network.requestWillBeSent"
        select e["params"]!["request"]!["url"]!.GetValue<string>();

    /// <summary>What the browser complained of: a script stopped, something was refused.</summary>
    public IEnumerable<string> Complaints =>
        from e in _browser.Events
        where e["method"]!.GetValue<string>() is "Runtime.exceptionThrown" or "Runtime.consoleAPICalled" or "Log.entryAdded"
        select e.ToJsonString();

    /// <summary>Opens the page of a production on a telephone of 390 × 844.</summary>
    /// <param name="before">A script that runs before the page's own.</param>
    public static async Task<Telephone> With(string page, string before = "")
    {
        var telephone = new Telephone(await Chromium.Start(), page, before);
        await telephone.Open();
        return telephone;
    }

    /// <summary>Closes the page and opens it again.</summary>
    public async Task Reopen() => await _browser.Open(_page, _session);

    /// <summary>Kills the process that the page is in, and opens the page in another.</summary>
    public async Task Crash()
    {
        await _browser.Tell("Page.crash", new { }, _session);
        await Open();
    }

    public async Task Wide(int width) =>
        await _browser.Ask(
            "Emulation.setDeviceMetricsOverride",
            new
            {
                width,
                height = 844,
                deviceScaleFactor = 1,
                mobile = true,
            },
            _session
        );

    public async Task Look(string scheme) =>
        await _browser.Ask(
            "Emulation.setEmulatedMedia",
            new { media = "screen", features = new[] { new { name = "prefers-color-scheme", value = scheme } } },
            _session
        );

    /// <summary>Sets the clock: <c>2026-10-05T09:00</c>.</summary>
    public async Task Clock(string at) => await Ask($"globalThis.clock = '{at}:00Z'");

    /// <summary>Files that the page saves go to a folder.</summary>
    public async Task SaveTo(string folder) =>
        await _browser.Ask("Browser.setDownloadBehavior", new { behavior = "allow", downloadPath = folder });

    /// <summary>Taps the one visible element of this selector, which nothing may cover.</summary>
    public async Task Tap(string selector)
    {
        var at = await Ask($"{Place}({JsonSerializer.Serialize(selector)})");
        Assert.True(at is JsonArray, at.ToJsonString());
        var point = new { x = at[0]!.GetValue<double>(), y = at[1]!.GetValue<double>() };
        await _browser.Ask("Input.dispatchTouchEvent", new { type = "touchStart", touchPoints = new[] { point } }, _session);
        await _browser.Ask("Input.dispatchTouchEvent", new { type = "touchEnd", touchPoints = Array.Empty<object>() }, _session);
        await Ask("new Promise(done => setTimeout(done, 0)).then(() => true)");
        Taps++;
    }

    /// <summary>Opens a chooser and taps what is chosen.</summary>
    public async Task Choose(string what, string value, string act = "pick")
    {
        await Tap($"#b-choose-{what}");
        await Tap($"#choose [data-do={act}][data-with='{value}']");
    }

    /// <summary>Types on the page's own pad.</summary>
    public async Task Pad(string keys)
    {
        foreach (var key in keys)
        {
            await Tap(string.Create(CultureInfo.InvariantCulture, $".pad [data-with='{key}']"));
        }
    }

    /// <summary>A length in a form: the chip, the pad, done.</summary>
    public async Task Length(string name, string keys)
    {
        await Tap($"#b-choose-{name}");
        await Pad(keys);
        await Tap("#b-done");
    }

    /// <summary>Types words with the telephone's own keyboard.</summary>
    public async Task Write(string selector, string words)
    {
        await Tap(selector);
        await _browser.Ask("Input.insertText", new { text = words }, _session);
    }

    /// <summary>Types other words in the place of those that are there.</summary>
    public async Task Rewrite(string selector, string words)
    {
        await Tap(selector);
        await Ask($"document.querySelector({JsonSerializer.Serialize(selector)}).select()");
        await _browser.Ask("Input.insertText", new { text = words }, _session);
    }

    /// <summary>The value of an expression, or what a promise comes to; true where there is none.</summary>
    public async Task<JsonNode> Ask(string expression) => await _browser.Promised(expression, _session) ?? JsonValue.Create(true);

    public async Task<string> Text(string selector) =>
        (await Ask($"document.querySelector({JsonSerializer.Serialize(selector)}).textContent")).GetValue<string>();

    async Task Open()
    {
        _session = await _browser.NewPage();
        await Wide(390);
        await _browser.Ask("Emulation.setTouchEmulationEnabled", new { enabled = true }, _session);
        await _browser.Ask("Emulation.setTimezoneOverride", new { timezoneId = "UTC" }, _session);
        await _browser.Ask("Page.addScriptToEvaluateOnNewDocument", new { source = Fixed + _before }, _session);
        await _browser.Open(_page, _session);
    }

    public async ValueTask DisposeAsync() => await _browser.DisposeAsync();
}
