using System.Globalization;

namespace Spoolbook.Watching;

/// <summary>What a browser asks for.</summary>
/// <param name="Status">What is wrong with it, as HTTP counts it; 200 where nothing is.</param>
/// <param name="Name">The paper, by its name in the folder.</param>
/// <param name="IsHead">Whether only the head of the answer is wanted.</param>
internal sealed record PageRequest(int Status, string Name, bool IsHead)
{
    /// <summary>Where a page waits to be remade: /.made?since=12.</summary>
    public const string Waiting = "/.made?since=";

    const string Index = "index.html";

    /// <summary>What the page that waits was made of; null for a paper.</summary>
    public long? Since { get; private init; }

    /// <summary>Reads the head of a request.</summary>
    /// <param name="port">The port that it came to, which its host must name.</param>
    public static PageRequest Parse(string head, int port)
    {
        var lines = head.Split("\r\n");
        if (lines[0].Split(' ') is not [var method, var target, "HTTP/1.1" or "HTTP/1.0"])
        {
            return new PageRequest(400, "", IsHead: false);
        }

        var hosts = lines.Skip(1).Where(l => l.StartsWith("Host:", StringComparison.OrdinalIgnoreCase)).Select(l => l[5..].Trim()).ToList();
        if (hosts is not [var host] || !IsOurs(host, port))
        {
            return new PageRequest(421, "", IsHead: false);
        }

        if (method is not ("GET" or "HEAD"))
        {
            return new PageRequest(405, "", IsHead: false);
        }

        if (target.StartsWith(Waiting, StringComparison.Ordinal))
        {
            return long.TryParse(target.AsSpan(Waiting.Length), NumberStyles.None, CultureInfo.InvariantCulture, out var since)
                ? new PageRequest(200, "", method == "HEAD") { Since = since }
                : new PageRequest(400, "", IsHead: false);
        }

        var path = Uri.UnescapeDataString(target.Split('?', 2)[0]);
        return path == "/" ? new PageRequest(200, Index, method == "HEAD")
            : path.StartsWith('/') ? new PageRequest(200, path[1..], method == "HEAD")
            : new PageRequest(400, "", IsHead: false);
    }

    static bool IsOurs(string host, int port) =>
        ((string[])["127.0.0.1", "localhost"]).Any(name => host == string.Create(CultureInfo.InvariantCulture, $"{name}:{port}"));
}
