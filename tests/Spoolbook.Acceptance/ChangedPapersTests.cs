using System.IO.Compression;
using System.Text.RegularExpressions;

namespace Spoolbook.Acceptance;

/// <summary>A change changes the papers that show it, and no others.</summary>
public sealed partial class ChangedPapersTests : IDisposable
{
    const string Before = "Dog in shot",
        After = "Cat in shot";

    static readonly DateTime _yesterday = new(2026, 10, 4, 18, 0, 0, DateTimeKind.Utc);

    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void A_corrected_remark_writes_exactly_the_papers_that_show_it_and_lists_them()
    {
        var production = _bench.CopyOf(Repository.Sample);
        Make(production);
        var first = Bench.Bytes(_bench.PathOf("papers"));
        foreach (var paper in first.Keys)
        {
            File.SetLastWriteTimeUtc(Paper(paper), _yesterday);
        }

        var showing = first.Keys.Where(Shows).ToList();
        var roll = Path.Combine(production, "rolls", "r01.yaml");
        File.WriteAllText(roll, File.ReadAllText(roll).Replace(Before, After, StringComparison.Ordinal));
        var said = Make(production);

        var second = Bench.Bytes(_bench.PathOf("papers"));
        Assert.Contains("camera-report-R01.pdf", showing);
        Assert.Equal(showing, second.Where(p => !p.Value.SequenceEqual(first[p.Key])).Select(p => p.Key));
        Assert.Equal(showing, second.Keys.Where(p => File.GetLastWriteTimeUtc(Paper(p)) != _yesterday));
        Assert.Equal(showing, Written().Matches(said).Select(m => m.Groups[1].Value));

        Assert.Contains("Nothing changed", Make(production), StringComparison.Ordinal);
        Assert.Equal(showing, second.Keys.Where(p => File.GetLastWriteTimeUtc(Paper(p)) != _yesterday));
    }

    string Make(string production)
    {
        var (status, said, _) = _bench.Run("make", production, "--out", "papers");
        Assert.Equal(0, status);
        return said;
    }

    string Paper(string name) => Path.Combine(_bench.PathOf("papers"), name);

    // By outside readers.
    bool Shows(string paper) =>
        Path.GetExtension(paper) switch
        {
            ".pdf" => string.Join(' ', Pages.TextOf(Paper(paper))),
            ".html" => PageText.Of(Paper(paper)),
            ".xlsx" => TextOfParts(Paper(paper)),
            _ => File.ReadAllText(Paper(paper)),
        }
            is var text
        && text.Contains(Before, StringComparison.Ordinal);

    static string TextOfParts(string workbook)
    {
        using var parts = ZipFile.OpenRead(workbook);
        return string.Concat(
            parts
                .Entries.Where(e => e.Name.EndsWith(".xml", StringComparison.Ordinal))
                .Select(e =>
                {
                    using var reader = new StreamReader(e.Open());
                    return reader.ReadToEnd();
                })
        );
    }

    [GeneratedRegex(@"^  (\S+)(?: \(changed\))?\r?$", RegexOptions.Multiline)]
    private static partial Regex Written();
}
