using System.Net;
using System.Net.Sockets;
using System.Text;
using System.Text.RegularExpressions;
using Spoolbook.Watching;

namespace Spoolbook.Acceptance;

/// <summary>Papers made anew on each save, and shown to a browser on this machine.</summary>
public sealed class WatchTests : IDisposable
{
    static readonly TimeSpan _longest = TimeSpan.FromMinutes(2);

    readonly Bench _bench = new();
    readonly CancellationTokenSource _stop = new();
    readonly StringWriter _out = new() { NewLine = "\n" };
    readonly StringWriter _error = new() { NewLine = "\n" };
    readonly TextWriter _outNow;
    readonly TextWriter _errorNow;
    Task<int>? _watching;

    public WatchTests() => (_outNow, _errorNow) = (TextWriter.Synchronized(_out), TextWriter.Synchronized(_error));

    public void Dispose()
    {
        _stop.Cancel();
        _watching?.Wait();
        _stop.Dispose();
        _out.Dispose();
        _error.Dispose();
        _bench.Dispose();
    }

    [Fact]
    public void A_save_makes_the_papers_anew_and_a_mistake_leaves_the_last_ones()
    {
        Start();
        Rewrite("title: ", "title: Another ");
        Wait(() =>
            Said().Contains("sunday.yaml changed", StringComparison.Ordinal) && Index().Contains("Another", StringComparison.Ordinal)
        );

        Rewrite("title: Another ", "titel: No ");
        Wait(() => Said().Contains("No paper was written", StringComparison.Ordinal));
        Assert.Contains("Another", Index(), StringComparison.Ordinal);

        Rewrite("titel: No ", "title: Third ");
        Wait(() => Index().Contains("Third", StringComparison.Ordinal));
    }

    [Fact]
    public void A_file_that_is_emptied_replaced_or_gone_for_a_while_is_read_when_it_is_back()
    {
        Start();
        var text = File.ReadAllText(Sheet).Replace("title: ", "title: Replaced ", StringComparison.Ordinal);
        File.WriteAllText(Sheet, "");
        File.WriteAllText(_bench.PathOf("production/sunday.yaml~new"), text);
        File.Move(_bench.PathOf("production/sunday.yaml~new"), Sheet, overwrite: true);
        Wait(() => Index().Contains("Replaced", StringComparison.Ordinal));

        Directory.Move(_bench.PathOf("production"), _bench.PathOf("elsewhere"));
        Wait(() => Said().Contains("is gone", StringComparison.Ordinal));
        Directory.Move(_bench.PathOf("elsewhere"), _bench.PathOf("production"));
        Rewrite("title: Replaced ", "title: Back ");
        Wait(() => Index().Contains("Back", StringComparison.Ordinal));
        Assert.False(Directory.Exists(_bench.PathOf("elsewhere")));
    }

    [Fact]
    public async Task It_ends_well_when_it_is_told_to()
    {
        Start();
        await _stop.CancelAsync();

        Assert.Equal(0, await _watching!.WaitAsync(_longest));
        Assert.EndsWith("Stopped watching.\n", Said(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_save_is_over_when_nothing_changes_any_more()
    {
        var looks = new Queue<string>(["a", "a", "", "ab", "abc", "abc", "abc", "abc"]);
        File.WriteAllText(_bench.PathOf("x.yaml"), "");
        var watch = new SaveWatch(
            () =>
            {
                File.WriteAllText(_bench.PathOf("x.yaml"), looks.TryDequeue(out var next) ? next : "abc");
                File.SetLastWriteTimeUtc(_bench.PathOf("x.yaml"), DateTime.UnixEpoch);
                return FolderSnapshot.Of(_bench.Folder, null, []);
            },
            _ => true
        );

        Assert.Equal("x.yaml", Assert.Single(watch.Next()!.Value));
        Assert.Equal(2, looks.Count);
        Assert.Empty(watch.Next(TimeSpan.Zero)!.Value);
    }

    [Fact]
    public void What_is_written_beside_the_record_wakes_nobody()
    {
        var production = _bench.CopyOf(Repository.Sample);
        var papers = Path.Combine(production, "out");
        Directory.CreateDirectory(papers);
        FolderSnapshot Look() => FolderSnapshot.Of(production, null, [papers]);
        var before = Look();
        foreach (
            var name in (string[])["papers/index.html", "schemas/kit.schema.json", "out/index.html", ".spoolbook/lock", ".r01.yaml.swp"]
        )
        {
            Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(production, name))!);
            File.WriteAllText(Path.Combine(production, name), "x");
        }

        Assert.True(Look().IsSame(before));
        File.AppendAllText(Path.Combine(production, "rolls", "r01.yaml"), "\n");
        Assert.Equal("rolls/r01.yaml", Assert.Single(Look().Since(before)));
    }

    [Fact]
    public async Task A_browser_gets_the_papers_and_is_told_when_they_are_remade()
    {
        var port = Start("--serve", "0");

        var index = Ask(port, "GET / HTTP/1.1");
        Assert.StartsWith("HTTP/1.1 200 ", index, StringComparison.Ordinal);
        var made = Regex.Match(index, "since=([0-9]+)").Groups[1].Value;
        Assert.StartsWith("HTTP/1.1 200 ", Ask(port, "GET /lab-order.pdf HTTP/1.1"), StringComparison.Ordinal);
        Assert.EndsWith("\r\n\r\n", Ask(port, "HEAD /lab-order.html HTTP/1.1"), StringComparison.Ordinal);
        var waiting = Task.Run(() => Ask(port, $"GET /.made?since={made} HTTP/1.1"));
        Rewrite("title: ", "title: Another ");

        Assert.False((await waiting.WaitAsync(_longest)).EndsWith(made, StringComparison.Ordinal));
        Wait(() => Ask(port, "GET / HTTP/1.1").Contains("Another", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("GET /../sunday.yaml HTTP/1.1", 404)]
    [InlineData("GET /..%2fsunday.yaml HTTP/1.1", 404)]
    [InlineData("GET /%2e%2e/sunday.yaml HTTP/1.1", 404)]
    [InlineData("GET //etc/passwd HTTP/1.1", 404)]
    [InlineData("GET /.spoolbook/papers.sha256 HTTP/1.1", 404)]
    [InlineData("GET /mine.txt HTTP/1.1", 404)]
    [InlineData("GET /link.html HTTP/1.1", 404)]
    [InlineData("GET http://127.0.0.1/ HTTP/1.1", 400)]
    [InlineData("GET / HTTP/3", 400)]
    [InlineData("POST / HTTP/1.1", 405)]
    [InlineData("GET /.made?since=x HTTP/1.1", 400)]
    [InlineData("", 400)]
    public void Nothing_but_papers_is_given_out(string line, int status)
    {
        Served(
            (port, papers) =>
            {
                File.WriteAllText(Path.Combine(papers, "mine.txt"), "mine");
                File.CreateSymbolicLink(Path.Combine(papers, "link.html"), "../secret");
                Assert.StartsWith($"HTTP/1.1 {status} ", Ask(port, line), StringComparison.Ordinal);
            }
        );
    }

    [Theory]
    [InlineData("Host: example.org")]
    [InlineData("Host: 127.0.0.1")]
    [InlineData("Host: 127.0.0.1.example.org:PORT")]
    [InlineData("Host: [::1]:PORT")]
    [InlineData("X: y")]
    [InlineData("Host: 127.0.0.1:PORT\r\nHost: example.org")]
    public void A_request_for_another_host_is_refused(string host)
    {
        Served(
            (port, _) =>
            {
                Assert.StartsWith("HTTP/1.1 421 ", Ask(port, "GET / HTTP/1.1", host), StringComparison.Ordinal);
                Assert.StartsWith("HTTP/1.1 200 ", Ask(port, "GET / HTTP/1.1", "host: localhost:PORT"), StringComparison.Ordinal);
            }
        );
    }

    [Fact]
    public void It_listens_for_this_machine_only()
    {
        Served(
            (port, _) =>
            {
                foreach (
                    var address in Dns.GetHostAddresses(Dns.GetHostName())
                        .Where(a => a.AddressFamily == AddressFamily.InterNetwork && !IPAddress.IsLoopback(a))
                )
                {
                    using var client = new TcpClient();
                    Assert.ThrowsAny<SocketException>(() => client.Connect(address, port));
                }
            }
        );
    }

    string Sheet => _bench.PathOf("production/sunday.yaml");

    void Served(Action<int, string> work)
    {
        var papers = _bench.PathOf("papers");
        Directory.CreateDirectory(Path.Combine(papers, ".spoolbook"));
        foreach (var name in (string[])["index.html", "link.html"])
        {
            File.AppendAllText(Path.Combine(papers, ".spoolbook", "papers.sha256"), $"00  {name}\n");
        }

        File.WriteAllText(Path.Combine(papers, "index.html"), "<html><body>papers</body></html>");
        File.WriteAllText(_bench.PathOf("secret"), "secret");
        using var server = PaperServer.Start(papers, 0);
        work(server.Port, papers);
    }

    // The port of the server, or 0.
    int Start(params string[] options)
    {
        _bench.CopyOf(Path.Combine(TestFolders.Clean, "hand-held-one-roll"));
        var around = new CommandEnvironment(_outNow, _errorNow, _bench.Folder, Bench.Made, Colour: false, Width: 100)
        {
            Stop = _stop.Token,
        };
        _watching = Task.Factory.StartNew(
            () => SpoolbookApp.Run(["watch", "production/sunday.yaml", .. options], around),
            CancellationToken.None,
            TaskCreationOptions.LongRunning,
            TaskScheduler.Default
        );
        Wait(() => File.Exists(_bench.PathOf("production/papers/index.html")) && Said().Contains("Wrote", StringComparison.Ordinal));
        return Regex.Match(Said(), "127[.]0[.]0[.]1:([0-9]+)") is { Success: true } at ? int.Parse(at.Groups[1].Value) : 0;
    }

    string Said()
    {
        // What the writers lock while they write is themselves.
        lock (_outNow)
        {
            lock (_errorNow)
            {
                return _error + _out.ToString();
            }
        }
    }

    string Index()
    {
        try
        {
            return File.ReadAllText(_bench.PathOf("production/papers/index.html"));
        }
        catch (IOException)
        {
            return "";
        }
    }

    void Rewrite(string old, string text)
    {
        Assert.Contains(old, File.ReadAllText(Sheet), StringComparison.Ordinal);
        File.WriteAllText(Sheet, File.ReadAllText(Sheet).Replace(old, text, StringComparison.Ordinal));
    }

    void Wait(Func<bool> until) =>
        Assert.True(SpinWait.SpinUntil(() => until() || _watching is { IsCompleted: true }, _longest) && until(), Said());

    static string Ask(int port, string line, string host = "Host: 127.0.0.1:PORT")
    {
        using var client = new TcpClient();
        client.Connect(IPAddress.Loopback, port);
        using var stream = client.GetStream();
        stream.Write(Encoding.ASCII.GetBytes($"{line}\r\n{host.Replace("PORT", $"{port}", StringComparison.Ordinal)}\r\n\r\n"));
        using var reader = new StreamReader(stream, Encoding.Latin1);
        return reader.ReadToEnd();
    }
}
