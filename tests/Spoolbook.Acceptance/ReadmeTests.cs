using Spoolbook.Checks;

namespace Spoolbook.Acceptance;

/// <summary>The first screen of the README shows what the program says.</summary>
public sealed class ReadmeTests
{
    static readonly string _page = File.ReadAllText(Path.Combine(Repository.Root, "README.md"));

    [Fact]
    public void The_finding_on_the_first_screen_is_one_that_check_prints()
    {
        var production = Path.Combine(TestFolders.Broken, "rewind-missed-by-twelve-frames");
        var said = File.ReadAllText(Path.Combine(production, "expected.verified.txt")).Split("\n\n")[0];
        var roll = File.ReadAllLines(Path.Combine(production, "rolls", "r01.yaml"));

        Assert.Contains($"```\n{said}\n```", _page, StringComparison.Ordinal);
        var lines = _page.Split("```yaml\n")[1].Split("\n```")[0].Split('\n');
        Assert.Equal(3, lines.Length);
        Assert.All(lines, line => Assert.Contains(line, roll));
    }

    [Fact]
    public void There_are_as_many_checks_as_the_first_screen_says()
    {
        Assert.Contains("One of more than 150 things that it catches", _page, StringComparison.Ordinal);
        Assert.True(Catalogue.All.Count() > 150);
    }

    [Fact]
    public void Files_to_install_have_the_number_of_this_version() =>
        Assert.Contains($"spoolbook-{ProgramVersion.Text}-linux-x64.tar.gz", _page, StringComparison.Ordinal);
}
