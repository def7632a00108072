using System.Text;
using System.Text.RegularExpressions;
using Spoolbook.Checks;
using Spoolbook.Entry.Lines;

namespace Spoolbook.Entry.Tests.Lines;

/// <summary>The pages of what is said about lines show what is really said.</summary>
public sealed partial class LinePageTests
{
    public static TheoryData<string> Names => [.. LineChecks.All];

    [Fact]
    public void Every_finding_of_a_line_is_listed() =>
        Assert.Equal(LineChecks.All.Order(StringComparer.Ordinal), CheckList.All.Where(c => c.Round == Round.Saying).Select(c => c.Name));

    [Theory]
    [MemberData(nameof(Names))]
    public void What_a_page_shows_as_flagged_is_refused_in_those_words(string name)
    {
        var page = Catalogue.Page(name)!.Text;

        // The findings are left beside the test's own files for scripts/accept-pages.
        var corrected = Flagged()
            .Replace(page, m => $"```line\n{m.Groups["line"].Value}\n```\n\n```text\n{Report(m.Groups["line"].Value)}```");
        var received = Path.Combine(AppContext.BaseDirectory, "received", name.Replace('/', '~') + ".md");
        Directory.CreateDirectory(Path.GetDirectoryName(received)!);
        File.Delete(received);
        if (corrected != page)
        {
            File.WriteAllText(received, corrected);
        }

        Assert.NotEmpty(Flagged().Matches(page));
        Assert.All(Flagged().Matches(page), m => Assert.Equal(name, Said.Line(m.Groups["line"].Value).Refused?.Check));
        Assert.Equal(corrected, page);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void What_a_page_shows_as_fine_is_read(string name)
    {
        var page = Catalogue.Page(name)!.Text;
        var fine = Line().Matches(page[page.IndexOf("## Fine", StringComparison.Ordinal)..]);

        Assert.NotEmpty(fine);
        Assert.All(fine, m => Assert.NotNull(Said.Line(m.Groups["line"].Value).Said));
    }

    static string Report(string line)
    {
        var report = new StringBuilder();
        if (Said.Line(line).Refused is { } finding)
        {
            var place = line.Substring(finding.Place.Column - 1, finding.Place.Length);
            report.Append($"error `{place}`: {finding.Message}\n    help: {finding.Help}\n");
        }

        return report.ToString();
    }

    [GeneratedRegex("```line\n(?<line>[^\n]*)\n```\n\n```text\n(?:(?!```).)*```", RegexOptions.Singleline | RegexOptions.ExplicitCapture)]
    private static partial Regex Flagged();

    [GeneratedRegex("```line\n(?<line>[^\n]*)\n```", RegexOptions.ExplicitCapture)]
    private static partial Regex Line();
}
