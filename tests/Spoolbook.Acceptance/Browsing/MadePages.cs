namespace Spoolbook.Acceptance.Browsing;

/// <summary>
/// The web pages of the sample, of every clean production, and of the awkward shoots. Each has its PDF beside it.
/// </summary>
public sealed class MadePages : IDisposable
{
    /// <summary>The name under which test classes share them, as they take a minute to make.</summary>
    public const string Shared = "made pages";

    readonly MadeOnce _made = new();
    readonly Bench _bench = new();

    public MadePages()
    {
        var awkward = AwkwardShoots.Write(_bench);
        foreach (var shoot in awkward)
        {
            var (status, printed, error) = _bench.Run("make", shoot, "--out", Path.GetFileName(shoot));
            Assert.True(status == 0, printed + error);
        }

        string[] folders =
        [
            .. new[] { Repository.Sample }
                .Concat(TestFolders.NamesIn(TestFolders.Clean).Select(name => Path.Combine(TestFolders.Clean, name)))
                .Select(_made.PapersOf),
            .. awkward.Select(shoot => _bench.PathOf(Path.GetFileName(shoot))),
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

    /// <summary>The pages of the sample.</summary>
    public IEnumerable<string> OfTheSample => Pages.Where(page => Path.GetDirectoryName(page) == _made.PapersOf(Repository.Sample));

    /// <summary>The index page of a production.</summary>
    public string IndexOf(string production) => Pages.Single(page => NameOf(page) == production + "/index.html");

    /// <summary>The pages that have a PDF.</summary>
    public IEnumerable<string> Papers => Pages.Where(page => File.Exists(Path.ChangeExtension(page, ".pdf")));

    /// <summary>A page's name in a failure.</summary>
    public static string NameOf(string page) => Path.GetFileName(Path.GetDirectoryName(page)) + "/" + Path.GetFileName(page);

    public void Dispose()
    {
        _made.Dispose();
        _bench.Dispose();
    }
}
