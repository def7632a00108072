namespace Spoolbook.Acceptance.Manual;

/// <summary>The pages about the commands, which are written from the commands.</summary>
public sealed class ManualTests
{
    [Fact]
    public void Each_command_has_a_manual_page()
    {
        var (version, date) = LatestChange();
        Assert.Equal(ProgramVersion.Text, version);
        var wrong = new List<string>();
        foreach (var (file, text) in ManualPage.All(version, date))
        {
            try
            {
                ReferencePage.Holds(text, "Spoolbook", $"man/{file}", "manual");
            }
            catch (Xunit.Sdk.TrueException)
            {
                wrong.Add(file);
            }
        }

        Assert.True(wrong.Count == 0, $"out of date: {string.Join(", ", wrong)}: run scripts/manual");
    }

    [Fact]
    public void One_page_has_all_commands() => ReferencePage.Holds(CommandPage.Write(), "Spoolbook", "COMMANDS.md", "manual");

    [ToolFact("mandoc")]
    public void A_manual_page_has_no_fault_that_a_judge_sees()
    {
        foreach (var page in Directory.EnumerateFiles(Path.Combine(Repository.Root, "src", "Spoolbook", "man"), "*.1"))
        {
            var (_, said) = Tools.Run("mandoc", "-T", "lint", "-W", "warning", page);
            Assert.Equal("", said);
        }
    }

    // The first heading of the list of changes: ## 0.2.0 (2026-11-29)
    static (string Version, string Date) LatestChange()
    {
        var head = File.ReadLines(Path.Combine(Repository.Root, "src", "Spoolbook", "CHANGELOG.md"))
            .First(line => line.StartsWith("## ", StringComparison.Ordinal));
        var words = head[3..].Split(' ');
        return (words[0], words[1].Trim('(', ')'));
    }
}
