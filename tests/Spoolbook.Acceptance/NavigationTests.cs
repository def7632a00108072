using System.Text;
using System.Text.RegularExpressions;
using UglyToad.PdfPig;

namespace Spoolbook.Acceptance;

/// <summary>How a reader gets about in the PDFs, and from one to another.</summary>
public sealed partial class NavigationTests(MadeSample sample) : IClassFixture<MadeSample>
{
    [Fact]
    public void The_outline_of_the_wrap_summary_has_its_headings_below_its_title()
    {
        using var pdf = PdfDocument.Open(sample.PathOf("wrap-summary.pdf"));

        Assert.True(pdf.TryGetBookmarks(out var outline));
        var title = Assert.Single(outline.Roots);
        Assert.Equal("Wrap summary", title.Title);
        Assert.Equal(["Money", "Film", "Shots", "Kit missing", "Sign-off", "Shot list"], title.Children.Select(c => c.Title).Take(6));
    }

    [ToolFact("pdfinfo")]
    public void The_wrap_summary_leads_to_its_parts_to_each_rolls_report_and_from_a_finding_to_its_take()
    {
        var summary = Encoding.Latin1.GetString(File.ReadAllBytes(sample.PathOf("wrap-summary.pdf")));
        var places = Tools.Run("pdfinfo", "-dests", sample.PathOf("wrap-summary.pdf")).Output;
        var inside = Inside().Matches(summary).Select(m => Said(m.Groups[1])).ToList();
        Assert.Contains("strips", inside);
        Assert.All(inside, name => Assert.Contains($"\"{name}\"", places, StringComparison.Ordinal));

        var outside = Outside().Matches(summary).Select(m => (File: Said(m.Groups[1]), Place: Said(m.Groups[2]))).ToList();
        Assert.Equal(7, outside.Where(link => link.Place.Length == 0).Distinct().Count());
        Assert.All(outside, link => Assert.True(File.Exists(sample.PathOf(link.File)), link.File));
        var takes = outside.Where(link => link.Place.Length > 0).Distinct().ToList();
        // Take 2A/4 is the second on the report of R02.
        Assert.Contains(("camera-report-R02.pdf", "take-2"), takes);
        Assert.All(takes, link =>
            Assert.Contains($"\"{link.Place}\"", Tools.Run("pdfinfo", "-dests", sample.PathOf(link.File)).Output, StringComparison.Ordinal)
        );
    }

    static string Said(Group hexadecimal) => Encoding.UTF8.GetString(Convert.FromHexString(hexadecimal.Value));

    [GeneratedRegex("/S/GoTo/D<([0-9A-F]+)>")]
    private static partial Regex Inside();

    [GeneratedRegex("/S/GoToR/F<([0-9A-F]+)>/D(?:<([0-9A-F]+)>|\\[0/Fit\\])")]
    private static partial Regex Outside();
}
