using System.Text.RegularExpressions;
using Spoolbook.Checks.Running;

namespace Spoolbook.Checks.Tests;

public partial class ReferenceTests
{
    [Fact]
    public void The_page_of_all_checks_is_made_from_the_pages_of_each() =>
        ReferencePage.Holds(CheckReference.Markdown(), "Spoolbook.Checks", "CHECKS.md", "reference-checks");

    [Fact]
    public void Every_check_and_every_tolerance_is_on_it()
    {
        var page = CheckReference.Markdown();

        Assert.All(Catalogue.All, c => Assert.Contains($"\n### {c.Name}\n", page, StringComparison.Ordinal));
        Assert.All(Tolerances.All, t => Assert.Contains($"| `{t.Name}` | {t.UsualText} |", page, StringComparison.Ordinal));
    }

    [Fact]
    public void Every_link_on_it_leads_to_a_page_or_a_heading()
    {
        var page = CheckReference.Markdown();
        var headings = Heading().Matches(page).Select(m => "#" + m.Groups[1].Value.Replace("/", "", StringComparison.Ordinal)).ToHashSet();

        Assert.DoesNotContain(Link().Matches(page).Select(m => m.Groups[1].Value), link =>
            !headings.Contains(link) && !File.Exists(Path.Combine(Repository.Root, "src", "Spoolbook.Checks", link))
        );
    }

    [GeneratedRegex("^### (.+)$", RegexOptions.Multiline)]
    private static partial Regex Heading();

    [GeneratedRegex("\\]\\(([^)]+)\\)")]
    private static partial Regex Link();
}
