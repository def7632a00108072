using System.Text;
using System.Text.RegularExpressions;

namespace Spoolbook.Acceptance;

/// <summary>The table of takes goes round: what is written out and taken in again changes nothing.</summary>
public sealed class TakesTableTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    public static TheoryData<string> Productions => [.. TestFolders.NamesIn(TestFolders.Clean)];

    [Fact]
    public void The_takes_of_the_sample_go_round() => GoesRound(Repository.Sample);

    [Theory]
    [MemberData(nameof(Productions))]
    public void The_takes_of_a_clean_production_go_round(string name) =>
        GoesRound(TestFolders.ProductionIn(Path.Combine(TestFolders.Clean, name)));

    [Fact]
    public void A_remark_with_a_comma_a_quote_and_accents_goes_round_in_the_form_of_RFC_4180()
    {
        var production = _bench.CopyOf(Repository.Sample);
        var roll = Path.Combine(production, "rolls", "r01.yaml");
        var note = new Regex("note: [^}]*}");
        File.WriteAllText(roll, note.Replace(File.ReadAllText(roll), "note: 'Möwe, \"links\"; =1+1'}", count: 1));

        var table = GoesRound(production);

        Assert.Contains("\"Möwe, \"\"links\"\"; =1+1\"", table, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', table.Replace("\r\n", "", StringComparison.Ordinal));
    }

    string GoesRound(string original)
    {
        var production = File.Exists(original) ? original : _bench.CopyOf(original, "round");
        _bench.Run("make", production, "--out", "papers", "--draft");
        var table = _bench.PathOf("papers/takes.csv");

        var (status, said, error) = _bench.Run("import", table, production, "--dry-run", "--format", "json");

        Assert.Equal((0, ""), (status, error));
        using var result = System.Text.Json.JsonDocument.Parse(said);
        Assert.Equal(
            (0, 0, 0),
            (
                result.RootElement.GetProperty("takes").GetProperty("new").GetInt32(),
                result.RootElement.GetProperty("takes").GetProperty("changed").GetInt32(),
                result.RootElement.GetProperty("files").GetArrayLength()
            )
        );
        return File.ReadAllText(table, Encoding.UTF8);
    }
}
