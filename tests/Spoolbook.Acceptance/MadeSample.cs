using System.Net;
using System.Text.RegularExpressions;

namespace Spoolbook.Acceptance;

/// <summary>The sample's papers, made once for all the tests that only read them.</summary>
public sealed class MadeSample : IDisposable
{
    readonly Bench _bench = new();

    public MadeSample() => Assert.Equal(0, _bench.Run("make", Repository.Sample, "--out", "papers").Status);

    public string PathOf(string paper) => Path.Combine(_bench.PathOf("papers"), paper);

    /// <summary>The words of a paper's page, blanks between them.</summary>
    public string WordsOf(string paper) => PageText.Of(PathOf(paper + ".html"));

    public void Dispose() => _bench.Dispose();
}

/// <summary>The words of a web page.</summary>
internal static partial class PageText
{
    public static string Of(string path)
    {
        var html = File.ReadAllText(path);
        return WebUtility.HtmlDecode(Space().Replace(Tag().Replace(html[html.IndexOf("<body>", StringComparison.Ordinal)..], " "), " "));
    }

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tag();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Space();
}
