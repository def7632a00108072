using System.Text.RegularExpressions;

namespace Spoolbook.Acceptance.Browsing;

/// <summary>
/// The web pages of the sample, of every clean production, and of two made from the sample: one in German, and one
/// where every name and remark is a word of sixty letters.
/// </summary>
public sealed partial class MadePages : IDisposable
{
    const string LongWord = "Wolkenkratzerdachterrassenmorgennebelstimmungswandelaufnahme";

    readonly MadeOnce _made = new();
    readonly Bench _bench = new();

    public MadePages()
    {
        var german = _bench.CopyOf(Repository.Sample, "sample/german");
        Change(Path.Combine(german, "production.yaml"), text => text.Replace("language: en", "language: de", StringComparison.Ordinal));
        var endless = _bench.CopyOf(Repository.Sample, "sample/endless");
        foreach (var file in Directory.GetFiles(endless, "*.yaml", SearchOption.AllDirectories))
        {
            Change(file, text => Named().Replace(text, "${key}: " + LongWord));
        }

        Assert.Equal(0, _bench.Run("make", german, "--out", "german").Status);
        Assert.Equal(0, _bench.Run("make", endless, "--out", "endless").Status);
        string[] folders =
        [
            .. new[] { Repository.Sample }
                .Concat(TestFolders.NamesIn(TestFolders.Clean).Select(name => Path.Combine(TestFolders.Clean, name)))
                .Select(_made.PapersOf),
            _bench.PathOf("german"),
            _bench.PathOf("endless"),
        ];

        // Forty reports of one production are the same page forty times.
        Pages =
        [
            .. folders
                .SelectMany(folder => Directory.GetFiles(folder, "*.html").Order(StringComparer.Ordinal))
                // The page to log on has tests of its own.
                .Where(page => !page.EndsWith("/pocket-log.html", StringComparison.Ordinal))
                .Where(page =>
                    !NameOf(page).StartsWith("forty-rolls/camera-report", StringComparison.Ordinal)
                    || NameOf(page).EndsWith("R40.html", StringComparison.Ordinal)
                ),
        ];
    }

    public IReadOnlyList<string> Pages { get; }

    /// <summary>The index page of a production.</summary>
    public string IndexOf(string production) => Pages.Single(page => NameOf(page) == production + "/index.html");

    /// <summary>A page's name in a failure.</summary>
    public static string NameOf(string page) => Path.GetFileName(Path.GetDirectoryName(page)) + "/" + Path.GetFileName(page);

    public void Dispose()
    {
        _made.Dispose();
        _bench.Dispose();
    }

    static void Change(string file, Func<string, string> change) => File.WriteAllText(file, change(File.ReadAllText(file)));

    [GeneratedRegex(
        "(?<key>\\b(title|code|name|role|what|where|stock|emulsion|notes?|serial|kept|condition-(out|back)|owner|how|receipt|reason|"
            + "said)): (\"[^\"]*\"|[^,}\\]\\n#\"\\[{]+)"
    )]
    private static partial Regex Named();
}
