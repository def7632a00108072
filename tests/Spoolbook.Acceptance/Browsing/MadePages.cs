using System.Text.RegularExpressions;
using Spoolbook.Acceptance.Folders;

namespace Spoolbook.Acceptance.Browsing;

/// <summary>The web pages of the sample, of every clean production, and of two that the sample was turned into: one in German, and one in which every name and remark is a word of sixty letters.</summary>
public sealed partial class MadePages : IDisposable
{
    const string LongWord = "Wolkenkratzerdachterrassenmorgennebelstimmungswandelaufnahme";

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

        string[] productions = [Repository.Sample, german, endless, .. TestFolders.NamesIn(TestFolders.Clean).Select(name => Path.Combine(TestFolders.Clean, name))];
        foreach (var production in productions)
        {
            Assert.Equal(0, _bench.Run("make", TestFolders.ProductionIn(production), "--out", Path.GetFileName(production)).Status);
        }

        // Forty reports of one production are one page forty times.
        Pages = [.. Directory.EnumerateFiles(_bench.Folder, "*.html", SearchOption.AllDirectories)
            .Where(page => !NameOf(page).StartsWith("forty-rolls/camera-report", StringComparison.Ordinal) || NameOf(page).EndsWith("R40.html", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)];
    }

    public IReadOnlyList<string> Pages { get; }

    public string PathOf(string name) => _bench.PathOf(name);

    /// <summary>What a page is called in a failure.</summary>
    public string NameOf(string page) => Path.GetRelativePath(_bench.Folder, page);

    public void Dispose() => _bench.Dispose();

    static void Change(string file, Func<string, string> change) => File.WriteAllText(file, change(File.ReadAllText(file)));

    [GeneratedRegex("(?<key>\\b(title|code|name|role|what|where|stock|emulsion|notes?|serial|kept|condition-(out|back)|owner|how|receipt|reason|said)): (\"[^\"]*\"|[^,}\\]\\n#\"\\[{]+)")]
    private static partial Regex Named();
}
