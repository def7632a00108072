namespace Spoolbook.Tests;

/// <summary>A school's folder is checked as a whole.</summary>
public sealed class SchoolCheckTests : IDisposable
{
    readonly Bench _bench = new();

    public SchoolCheckTests() => _bench.CopyOf(Path.Combine(Repository.Root, "tests", "Spoolbook.Acceptance", "department"), "term");

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void The_sample_school_is_clean()
    {
        var (status, printed, _) = _bench.Run("check", "term");
        Assert.True(status == 0, printed);
        Assert.Contains("term/school.yaml: no findings\n", printed, StringComparison.Ordinal);
        Assert.EndsWith("4 productions: no errors, no warnings, no notes.\n", printed, StringComparison.Ordinal);
    }

    [Fact]
    public void A_clash_of_loans_is_found_in_the_schools_file()
    {
        File.AppendAllText(_bench.PathOf("term/school.yaml"), "  - {piece: B1, to: KITE, out: 2026-10-06, back: 2026-10-12}\n");
        var (status, printed, _) = _bench.Run("check", "term");
        Assert.Equal(1, status);
        Assert.Matches("term/school.yaml:[0-9]+:13: error: B1 goes out to KITE on 2026-10-06", printed);
        Assert.Contains("Errors in term/school.yaml.", printed, StringComparison.Ordinal);
    }

    [Fact]
    public void In_the_schools_folder_check_means_all_of_it() =>
        Assert.Contains("4 productions: no errors", _bench.RunIn("term", "check").Out, StringComparison.Ordinal);

    [Fact]
    public void A_part_of_the_school_is_checked_without_its_loans() =>
        Assert.DoesNotContain("school.yaml", _bench.Run("check", "term/first-year").Out, StringComparison.Ordinal);
}
