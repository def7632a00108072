using Spoolbook.Papers;

namespace Spoolbook.Acceptance;

/// <summary>Some papers of a production, and papers that are only asked about.</summary>
public sealed class SomePapersTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void Every_paper_of_the_sample_goes_by_the_name_of_its_kind()
    {
        _bench.Run("make", Repository.Sample, "--out", "papers");

        Assert.All(Bench.Bytes(_bench.PathOf("papers")).Keys, file =>
            Assert.Contains(PaperNames.Kinds, kind => PaperNames.Means(kind, Path.GetFileNameWithoutExtension(file)))
        );
    }

    [Fact]
    public void A_paper_that_is_asked_for_is_made_anew_and_no_other_is_touched()
    {
        var production = _bench.CopyOf(Repository.Sample);
        var papers = Path.Combine(production, "papers");
        _bench.Run("make", production);
        var before = Bench.Bytes(papers);
        var file = Path.Combine(production, "production.yaml");
        File.WriteAllText(file, File.ReadAllText(file).Replace("Salt for the Heron", "Salt for the Crane", StringComparison.Ordinal));

        var (status, said, _) = _bench.Run("make", production, "--only", "lab-order", "--only", "camera-report-R01.pdf");

        Assert.Equal(0, status);
        Assert.Contains("Wrote 4 of 4 papers", said, StringComparison.Ordinal);
        var after = Bench.Bytes(papers);
        Assert.Equal(before.Keys, after.Keys);
        Assert.Equal(
            ["camera-report-R01.html", "camera-report-R01.pdf", "lab-order.html", "lab-order.pdf"],
            before.Keys.Where(name => !before[name].SequenceEqual(after[name]))
        );

        // The rest is of an earlier day, so the next make must not take it for what it would make.
        _bench.Run("make", production);
        Assert.Equal(MadeIn("whole", production), Bench.Bytes(papers));
    }

    [Fact]
    public void Nothing_is_written_on_a_dry_run()
    {
        var production = _bench.CopyOf(Repository.Sample);

        var (status, said, _) = _bench.Run("make", production, "--dry-run");

        Assert.Equal(0, status);
        Assert.Contains("Would write ", said, StringComparison.Ordinal);
        Assert.Contains("lab-order.pdf", said, StringComparison.Ordinal);
        Assert.False(Path.Exists(Path.Combine(production, "papers")));
    }

    [Fact]
    public void A_dry_run_over_papers_that_are_there_says_what_would_change_and_changes_nothing()
    {
        var production = _bench.CopyOf(Repository.Sample);
        _bench.Run("make", production);
        File.WriteAllText(Path.Combine(production, "papers", "lab-order.html"), "mine");
        var before = Bench.Bytes(Path.Combine(production, "papers"));

        var (_, said, _) = _bench.Run("make", production, "--dry-run");

        Assert.Contains("Would write 1 of ", said, StringComparison.Ordinal);
        Assert.Equal(before, Bench.Bytes(Path.Combine(production, "papers")));
    }

    [Fact]
    public void With_strict_a_warning_keeps_papers_from_being_written()
    {
        var (status, _, error) = _bench.Run("make", Repository.Sample, "--out", "papers", "--strict");

        Assert.Equal(1, status);
        Assert.Contains("No paper was written: with --strict a warning stops it", error, StringComparison.Ordinal);
        Assert.False(Path.Exists(_bench.PathOf("papers")));
    }

    [Fact]
    public void A_quiet_make_prints_nothing_where_all_is_well()
    {
        Assert.Equal((0, "", ""), _bench.Run("make", Repository.Sample, "--out", "papers", "-q"));
    }

    [Theory]
    [InlineData("lab-odrer", "Did you mean lab-order?")]
    [InlineData("shopping-list", "write camera-report, lab-order, ")]
    public void A_paper_that_there_is_not_is_refused_with_those_there_are(string name, string said)
    {
        var (status, _, error) = _bench.Run("make", Repository.Sample, "--out", "papers", "--only", name);

        Assert.Equal(2, status);
        Assert.Contains(said, error, StringComparison.Ordinal);
    }

    [Fact]
    public void Takes_can_come_from_a_pipe()
    {
        var production = _bench.CopyOf(Repository.Sample);

        var (status, said, _) = _bench.Answer("Roll,Scene,Shot,Take,Remarks\nR01,1,A,1,a gull\n", "import", "-", production, "--dry-run");

        Assert.Equal(0, status);
        Assert.Contains("a gull", said, StringComparison.Ordinal);
    }

    SortedDictionary<string, byte[]> MadeIn(string folder, string production)
    {
        _bench.Run("make", production, "--out", folder);
        return Bench.Bytes(_bench.PathOf(folder));
    }
}
