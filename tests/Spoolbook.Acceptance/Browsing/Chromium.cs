using System.Diagnostics;
using System.Globalization;
using System.Net.WebSockets;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Spoolbook.Acceptance.Browsing;

/// <summary>An outside browser without a window, driven by its own protocol.</summary>
internal sealed class Chromium : IAsyncDisposable
{
    static readonly TimeSpan _patience = TimeSpan.FromMinutes(10);

    readonly string _profile = Directory.CreateTempSubdirectory("spoolbook-browser-").FullName;
    readonly ClientWebSocket _socket = new();
    readonly CancellationTokenSource _end = new(_patience);
    readonly List<JsonObject> _events = [];
    Process? _process;
    int _last;

    /// <summary>The browser's events since the last navigation.</summary>
    public IEnumerable<JsonObject> Events => _events;

    public static async Task<Chromium> Start()
    {
        var browser = new Chromium();
        string[] arguments =
        [
            "--headless",
            "--no-sandbox",
            "--disable-gpu",
            "--no-first-run",
            "--remote-debugging-port=0",
            "--user-data-dir=" + browser._profile,
            "about:blank",
        ];
        browser._process = Process.Start(
            new ProcessStartInfo("chromium", arguments) { RedirectStandardError = true, RedirectStandardOutput = true }
        )!;
        browser._process.ErrorDataReceived += (_, _) => { };
        browser._process.OutputDataReceived += (_, _) => { };
        browser._process.BeginErrorReadLine();
        browser._process.BeginOutputReadLine();

        // The browser writes its port into its profile once it listens.
        var port = Path.Combine(browser._profile, "DevToolsActivePort");
        while (!File.Exists(port) || (await File.ReadAllLinesAsync(port, browser._end.Token)).Length < 2)
        {
            await Task.Delay(50, browser._end.Token);
        }

        var lines = await File.ReadAllLinesAsync(port, browser._end.Token);
        await browser._socket.ConnectAsync(new Uri($"ws://127.0.0.1:{lines[0]}{lines[1]}"), browser._end.Token);
        return browser;
    }

    /// <summary>Opens a new page; returns the session to use it with.</summary>
    public async Task<string> NewPage()
    {
        var target = (await Ask("Target.createTarget", new { url = "about:blank" }))["targetId"]!.GetValue<string>();
        var session = (await Ask("Target.attachToTarget", new { targetId = target, flatten = true }))["sessionId"]!.GetValue<string>();
        foreach (var domain in (string[])["Page", "Runtime", "Log", "Network"])
        {
            await Ask(domain + ".enable", new { }, session);
        }

        return session;
    }

    /// <summary>Opens a file and waits until it is loaded.</summary>
    public async Task Open(string file, string session)
    {
        _events.Clear();
        await Ask("Page.navigate", new { url = new Uri(file).AbsoluteUri }, session);
        while (!_events.Any(e => e["method"]!.GetValue<string>() == "Page.loadEventFired"))
        {
            Keep(await Receive());
        }
    }

    /// <summary>The value of a JavaScript expression in the page.</summary>
    public async Task<JsonNode> Value(string expression, string session)
    {
        var answer = await Ask("Runtime.evaluate", new { expression, returnByValue = true }, session);
        Assert.Null(answer["exceptionDetails"]?.ToJsonString());
        return answer["result"]!["value"]!;
    }

    /// <summary>The value that a promise in the page comes to.</summary>
    public async Task<JsonNode?> Promised(string expression, string session)
    {
        var answer = await Ask(
            "Runtime.evaluate",
            new
            {
                expression,
                returnByValue = true,
                awaitPromise = true,
            },
            session
        );
        Assert.Null(answer["exceptionDetails"]?.ToJsonString());
        return answer["result"]!["value"];
    }

    /// <summary>Sends a command and waits for its answer.</summary>
    public async Task<JsonObject> Ask(string method, object arguments, string? session = null)
    {
        var id = await Tell(method, arguments, session);
        while (true)
        {
            var answer = await Receive();
            if (answer["id"]?.GetValue<int>() == id)
            {
                return answer["error"] is { } error
                    ? throw new InvalidOperationException(string.Create(CultureInfo.InvariantCulture, $"{method}: {error.ToJsonString()}"))
                    : answer["result"]!.AsObject();
            }

            Keep(answer);
        }
    }

    /// <summary>Sends a command that nobody answers, as one that kills the page; returns its number.</summary>
    public async Task<int> Tell(string method, object arguments, string? session = null)
    {
        var id = ++_last;
        var message = new Dictionary<string, object>
        {
            ["id"] = id,
            ["method"] = method,
            ["params"] = arguments,
        };
        if (session is not null)
        {
            message["sessionId"] = session;
        }

        await _socket.SendAsync(JsonSerializer.SerializeToUtf8Bytes(message), WebSocketMessageType.Text, endOfMessage: true, _end.Token);
        return id;
    }

    public async ValueTask DisposeAsync()
    {
        _socket.Dispose();
        if (_process is { } process)
        {
            process.Kill(entireProcessTree: true);
            await process.WaitForExitAsync();
            process.Dispose();
        }

        _end.Dispose();
        Directory.Delete(_profile, recursive: true);
    }

    void Keep(JsonObject message)
    {
        if (message["method"] is not null)
        {
            _events.Add(message);
        }
    }

    async Task<JsonObject> Receive()
    {
        using var whole = new MemoryStream();
        var part = new byte[1 << 16];
        WebSocketReceiveResult got;
        do
        {
            got = await _socket.ReceiveAsync(part, _end.Token);
            whole.Write(part, 0, got.Count);
        } while (!got.EndOfMessage);
        return JsonNode.Parse(whole.ToArray())!.AsObject();
    }
}
