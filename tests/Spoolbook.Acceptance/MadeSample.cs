using System.Net;
using System.Text.RegularExpressions;

namespace Spoolbook.Acceptance;

/// <summary>The sample's papers, made once for all the tests that only read them.</summary>
public sealed class MadeSample : IDisposable
{
    readonly MadeOnce _made = new();

    public string PathOf(string paper) => Path.Combine(_made.PapersOf(Repository.Sample), paper);

    /// <summary>The words of a paper's page, with blanks between them.</summary>
    public string WordsOf(string paper) => PageText.Of(PathOf(paper + ".html"));

    public void Dispose() => _made.Dispose();
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
