using System.Collections.Concurrent;
using System.Text;
using Spoolbook.Digests;
using Spoolbook.Papers.Typesetting.Setup;

namespace Spoolbook.Papers;

/// <summary>
/// The papers as they were printed last, for whoever prints a production again and again: a paper whose template prints the same
/// text as before, for the same kind of page, is not set again.
/// </summary>
public sealed class PrintedBefore
{
    readonly ConcurrentDictionary<string, (string Key, PrintedPaper Paper)> _papers = new(StringComparer.Ordinal);

    /// <summary>The papers that were not set again so far.</summary>
    public int Spared { get; private set; }

    internal static string KeyOf(string text, string title, string style, PageSetup setup, DateTimeOffset made)
    {
        var digest = new Sha256();
        foreach (var part in (string[])[text, title, style, setup.ToString(), made.ToString("O")])
        {
            digest.Add(Encoding.UTF8.GetBytes(part));
            digest.Add([0]);
        }

        return Convert.ToHexStringLower(digest.Finish());
    }

    internal PrintedPaper Of(string name, string key, Func<PrintedPaper> print)
    {
        if (_papers.TryGetValue(name, out var before) && before.Key == key)
        {
            lock (_papers)
            {
                Spared++;
            }

            return before.Paper;
        }

        var paper = print();
        _papers[name] = (key, paper);
        return paper;
    }
}
