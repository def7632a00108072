using Spoolbook.Acceptance.Folders;
using Spoolbook.Acceptance.Snapshots;

namespace Spoolbook.Acceptance;

/// <summary>
/// Productions with mistakes, a folder each. Their findings were read aloud, as a second-year student would, before
/// they were accepted.
/// </summary>
public class BrokenProductions
{
    const string Expected = "expected";

    public static TheoryData<string> All => [.. TestFolders.NamesIn(TestFolders.Broken)];

    public static TheoryData<string> WithErrors =>
        [.. TestFolders.NamesIn(TestFolders.Broken).Where(name => Accepted(name).EndsWith("exit status 1\n", StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(All))]
    public void A_broken_production_has_exactly_its_findings(string name)
    {
        var folder = Path.Combine(TestFolders.Broken, name);

        var run = Check(folder);

        TextSnapshot.Matches(folder, Expected, FormattableString.Invariant($"{run.Said}{run.Complained}exit status {run.Status}\n"));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Every_broken_folder_has_findings_that_were_accepted(string name) =>
        Assert.Contains(" [", Accepted(name), StringComparison.Ordinal);

    [Theory]
    [MemberData(nameof(All))]
    public void A_second_look_finds_the_same(string name)
    {
        var folder = Path.Combine(TestFolders.Broken, name);

        Assert.Equal(Check(folder), Check(folder));
    }

    [Theory]
    [MemberData(nameof(WithErrors))]
    public void Yesterdays_papers_keep_their_bytes_when_there_are_errors(string name)
    {
        using var copy = new FolderCopy(Path.Combine(TestFolders.Broken, name));
        copy.Write("papers/index.html", "<p>yesterday</p>");
        copy.Write("papers/camera-report-R01.pdf", "%PDF of yesterday");
        var before = copy.Contents();

        var run = InProcess.Run(copy.Path, "make", TestFolders.ProductionIn(copy.Path));

        Assert.Equal(1, run.Status);
        Assert.Equal(before, copy.Contents());
    }

    [Fact]
    public void At_least_thirty_productions_are_broken() => Assert.True(All.Count >= 30);

    [Fact]
    public void Nothing_was_accepted_for_a_folder_that_is_gone() =>
        Assert.DoesNotContain(TestFolders.NamesIn(TestFolders.Broken), name =>
            Directory.GetFiles(Path.Combine(TestFolders.Broken, name), "*.yaml", SearchOption.AllDirectories).Length == 0
        );

    static CommandRun Check(string folder) => InProcess.Run(folder, "check", TestFolders.ProductionIn(folder));

    static string Accepted(string name)
    {
        var file = Path.Combine(TestFolders.Broken, name, Expected + TextSnapshot.Verified);
        return File.Exists(file) ? File.ReadAllText(file) : "";
    }
}
