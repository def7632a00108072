using System.IO.Compression;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Spoolbook.Acceptance;

/// <summary>A school makes its term: the papers of every production, and its own page and workbook over them.</summary>
public sealed partial class DepartmentTests : IDisposable
{
    static readonly string[] _productions = ["first-year/ferry", "first-year/kite", "second-year/goat", "second-year/moth"];

    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void A_term_is_made_in_one_go_and_its_figures_are_the_sums_of_the_productions_ledgers()
    {
        var school = _bench.CopyOf(Path.Combine(Repository.Root, "tests", "Spoolbook.Acceptance", "department"), "term");
        var (status, printed, error) = _bench.Run("make", "term");
        Assert.True(status == 0, printed + error);
        Assert.All(_productions, name => Assert.Contains($"term/{name}: no findings, ", printed, StringComparison.Ordinal));
        Assert.Contains("term/school.yaml: no findings, 2 papers", printed, StringComparison.Ordinal);

        var ledgers = _productions.Select(name => Ledger(Path.Combine(school, name, "papers", "ledger.json"))).ToList();
        var page = File.ReadAllText(Path.Combine(school, "papers", "index.html"));
        var film = page[page.IndexOf("id=\"film\"", StringComparison.Ordinal)..];
        var total = Cell().Matches(Total().Match(film).Value).Select(m => m.Groups[1].Value).ToList();
        Assert.Equal(["All 16mm", "6", $"{ledgers.Sum(l => l.Takes)}"], total.Take(3));
        Assert.Equal($"{ledgers.Sum(l => l.Exposed) / 40}+{ledgers.Sum(l => l.Exposed) % 40:00}", total[3]);
        using var book = ZipFile.OpenRead(Path.Combine(school, "papers", "term.xlsx"));
        Assert.Equal(7, book.Entries.Count(e => e.FullName.StartsWith("xl/worksheets/sheet", StringComparison.Ordinal)));

        Assert.All(_productions, name => Assert.Contains($"href=\"../{name}/papers/index.html\"", page, StringComparison.Ordinal));
        var help = Link().Match(page[page.IndexOf("id=\"help\"", StringComparison.Ordinal)..]).Value;
        // A body that is overdue, and stock that will lack: more than any other has.
        Assert.Contains("../first-year/kite/papers/index.html", help, StringComparison.Ordinal);

        var again = _bench.Run("make", "term").Out;
        Assert.Contains("0 new or changed", again, StringComparison.Ordinal);
    }

    [Fact]
    public void A_loan_that_came_back_broken_or_without_a_part_says_so_on_the_kit_list()
    {
        var school = _bench.CopyOf(Path.Combine(Repository.Root, "tests", "Spoolbook.Acceptance", "department"), "term");
        var file = Path.Combine(school, "school.yaml");
        const string loan = "came-back: 2026-10-08, condition: good, by: lise}";
        Assert.Contains(loan, File.ReadAllText(file), StringComparison.Ordinal);
        File.WriteAllText(
            file,
            File.ReadAllText(file)
                .Replace(loan, "came-back: 2026-10-08, condition: broken, missing: [rewind key], by: lise}", StringComparison.Ordinal)
        );
        Assert.Equal(0, _bench.Run("make", "term/second-year/goat").Status);

        var list = PageText.Of(Path.Combine(school, "second-year", "goat", "papers", "kit-list.html"));
        Assert.Contains("CAME BACK BROKEN; came back without: rewind key", list, StringComparison.Ordinal);
        Assert.Contains("B1 came back without: rewind key.", list, StringComparison.Ordinal);
    }

    [Fact]
    public void A_loan_to_one_production_makes_no_paper_of_another_again()
    {
        var school = _bench.CopyOf(Path.Combine(Repository.Root, "tests", "Spoolbook.Acceptance", "department"), "term");
        _bench.Run("make", "term");
        var file = Path.Combine(school, "school.yaml");
        File.AppendAllText(file, "  - {piece: Case 1, to: second-year/moth, out: 2026-10-04, back: 2026-10-12}\n");
        var printed = _bench.Run("make", "term").Out;
        Assert.Matches("term/first-year/ferry: no findings, [0-9]+ papers as before", printed);
        Assert.Matches("term/second-year/moth: no findings, [0-9]+ papers\n", printed);
    }

    // A production of 16 mm film has 40 frames to the foot.
    static (long Exposed, int Takes) Ledger(string path)
    {
        using var json = JsonDocument.Parse(File.ReadAllText(path));
        var total = json.RootElement.GetProperty("total");
        var exposed = total.GetProperty("film").GetProperty("exposed");
        return (exposed.GetProperty("frames").GetInt64(), total.GetProperty("takes").GetInt32());
    }

    [GeneratedRegex("<tr class=\"total\">.*?</tr>", RegexOptions.Singleline)]
    private static partial Regex Total();

    [GeneratedRegex("<t[hd][^>]*>([^<]*)</t[hd]>")]
    private static partial Regex Cell();

    [GeneratedRegex("href=\"[^\"]+\"")]
    private static partial Regex Link();
}
