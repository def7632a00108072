using Spoolbook.Checks;
using Spoolbook.Checks.Ruling;

namespace Spoolbook.Acceptance;

/// <summary>Every finding of every stage can be explained, set and accepted in the same way, under one name.</summary>
public sealed class FindingNamesTests : IDisposable
{
    const string Letters = "paper/missing-glyph";

    readonly Bench _bench = new();

    public static TheoryData<string> Names => [.. CheckList.All.Select(c => c.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_name_can_be_explained_set_and_accepted_or_is_fixed(string name)
    {
        Production("Pier", $"rules: {{levels: {{{name}: note}}}}\naccept: [{{check: {name}, reason: Meant so}}]");

        var (explained, page, _) = _bench.Run("explain", name);
        var (_, printed, _) = _bench.Run("check", "production.yaml");

        Assert.Equal(0, explained);
        Assert.Contains(name, page, StringComparison.Ordinal);
        Assert.DoesNotContain("[rules/nothing-of-that-name]", printed, StringComparison.Ordinal);
        Assert.DoesNotContain("[accept/unknown-check]", printed, StringComparison.Ordinal);
        Assert.Equal(HouseLevels.IsFixed(name), printed.Contains("[rules/level-is-fixed]", StringComparison.Ordinal));
        Assert.Equal(HouseLevels.IsFixed(name), printed.Contains("[accept/cannot-be-accepted]", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("", "warning", 0)]
    [InlineData("rules: {levels: {paper/missing-glyph: note}}", "note", 0)]
    [InlineData("rules: {levels: {paper: note}}", "note", 0)]
    [InlineData("rules: {levels: {paper/missing-glyph: error}}", "error", 1)]
    public void What_printing_finds_has_the_level_that_the_production_sets(string rules, string level, int status)
    {
        Production("Pier 桟橋", rules);

        var (ended, printed, _) = _bench.Run("make", "production.yaml");

        Assert.Equal(status, ended);
        Assert.Contains($"{level}: ", Report(printed, Letters), StringComparison.Ordinal);
        Assert.Equal(status == 0, Directory.Exists(_bench.PathOf("papers")));
    }

    [Fact]
    public void A_draft_lists_on_each_page_the_printing_findings_that_the_production_makes_errors()
    {
        Production("Pier 桟橋", "rules: {levels: {paper/missing-glyph: error}}");

        var (status, _, _) = _bench.Run("make", "production.yaml", "--draft");

        Assert.Equal(1, status);
        Assert.Contains("font has no", File.ReadAllText(_bench.PathOf("papers/wrap-summary.html")), StringComparison.Ordinal);
    }

    [Fact]
    public void What_printing_finds_is_turned_off()
    {
        Production("Pier 桟橋", "rules: {levels: {paper/missing-glyph: off}}");

        var (status, printed, _) = _bench.Run("make", "production.yaml");

        Assert.Equal(0, status);
        Assert.DoesNotContain(Letters, printed, StringComparison.Ordinal);
    }

    [Fact]
    public void A_printing_finding_can_be_accepted_and_check_does_not_call_its_waiver_unused()
    {
        Production("Pier 桟橋", "accept: [{check: paper/missing-glyph, reason: The name of the pier}]");

        var (_, checkedOnly, _) = _bench.Run("check", "production.yaml");
        var (_, made, _) = _bench.Run("make", "production.yaml");

        Assert.DoesNotContain("accept/", checkedOnly, StringComparison.Ordinal);
        Assert.DoesNotContain($"[{Letters}]", made, StringComparison.Ordinal);
        Assert.DoesNotContain("accept/", made, StringComparison.Ordinal);
        Assert.Contains("(1 more intentional)", made, StringComparison.Ordinal);
    }

    [Fact]
    public void A_waiver_for_what_printing_did_not_find_waives_nothing()
    {
        Production("Pier", "accept: [{check: paper/missing-glyph, reason: The name of the pier}]");

        var (_, checkedOnly, _) = _bench.Run("check", "production.yaml");
        var (_, made, _) = _bench.Run("make", "production.yaml");

        Assert.DoesNotContain("accept/", checkedOnly, StringComparison.Ordinal);
        Assert.Contains("[accept/nothing-to-accept]", made, StringComparison.Ordinal);
    }

    [Fact]
    public void What_keeps_a_paper_from_being_printed_stays_an_error_at_any_level_set()
    {
        Production("Pier", "rules: {levels: {paper: off}}\naccept: [{check: paper/words, reason: Meant so}]");
        Directory.CreateDirectory(_bench.PathOf("own"));
        File.WriteAllText(_bench.PathOf("own/words.en.txt"), "months-short = Jan Feb\nno-such-word = Word\n");

        var (status, printed, error) = _bench.Run("make", "production.yaml", "--templates", "own");

        Assert.Equal(1, status);
        Assert.Contains("error: ", Report(printed, "paper/words"), StringComparison.Ordinal);
        Assert.DoesNotContain("no-such-word", printed, StringComparison.Ordinal);
        Assert.Contains("No paper was written", error, StringComparison.Ordinal);
    }

    public void Dispose() => _bench.Dispose();

    static string Report(string printed, string name) =>
        printed.Split("\n\n").Single(part => part.Contains($"[{name}]", StringComparison.Ordinal));

    void Production(string title, string more) =>
        File.WriteAllText(
            _bench.PathOf("production.yaml"),
            "spoolbook: 1\n"
                + $"title: {title}\n"
                + "code: PIER\n"
                + "lots: [{lot: L1, stock: Colour negative 250 D, ei: 250, balance: daylight, process: ecn-2, length: 100ft, units: 1}]\n"
                + more
                + "\n"
        );
}
