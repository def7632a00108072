using System.Globalization;
using Spoolbook.Acceptance.Browsing;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;

namespace Spoolbook.Acceptance;

/// <summary>
/// Nothing on a printed page is cut off, runs out of its cell or over what is beside it: measured with an outside
/// reader, in every paper of every clean and awkward production.
/// </summary>
[Collection(MadePages.Shared)]
public sealed class OverflowTests(MadePages made)
{
    // Half a point is the width of the rules themselves.
    const double Rule = 0.6;

    // The bar of a flagged row is in the margin; no letter is.
    const double Margin = 39,
        SmallMargin = 14;

    // Kerned pairs overlap a little, and an accent lies on its letter.
    const double Overlap = 0.3;

    IEnumerable<string> Pdfs =>
        made
            .Papers.Select(page => Path.GetDirectoryName(page)!)
            .Distinct()
            .SelectMany(folder => Directory.GetFiles(folder, "*.pdf").Order(StringComparer.Ordinal));

    [Fact]
    public void No_letter_is_outside_the_margins_of_its_page() =>
        Each(
            (name, page) =>
            {
                var sheet = name.Contains("can-labels", StringComparison.Ordinal);
                var margin =
                    sheet ? 5
                    : page.Width < 400 ? SmallMargin
                    : Margin;
                return page
                    .Letters.Where(l => l.StartBaseLine.X < margin || l.EndBaseLine.X > page.Width - margin || l.StartBaseLine.Y < 12)
                    .Where(l => !string.IsNullOrWhiteSpace(l.Value))
                    .Select(l => Said(l));
            }
        );

    [Fact]
    public void No_letter_crosses_the_edge_of_the_box_that_it_is_in() =>
        Each(
            (_, page) =>
            {
                var boxes = BoxesOf(page).ToList();
                return page
                    .Letters.Where(l => !string.IsNullOrWhiteSpace(l.Value))
                    .Where(letter =>
                    {
                        var (x, y) = (
                            (letter.StartBaseLine.X + letter.EndBaseLine.X) / 2,
                            letter.StartBaseLine.Y + letter.PointSize * 0.25
                        );
                        return boxes
                            .Where(box => box.Left < x && x < box.Right && box.Bottom < y && y < box.Top)
                            .Any(box =>
                                letter.StartBaseLine.X < box.Left - Rule
                                || letter.EndBaseLine.X > box.Right + Rule
                                || letter.StartBaseLine.Y < box.Bottom - Rule
                            );
                    })
                    .Select(l => Said(l));
            }
        );

    [Fact]
    public void No_text_runs_over_the_text_beside_it() =>
        Each(
            (_, page) =>
                page
                    .Letters.Where(l => !string.IsNullOrWhiteSpace(l.Value))
                    .GroupBy(l => Math.Round(l.StartBaseLine.Y, 1))
                    .Select(line => line.OrderBy(l => l.StartBaseLine.X).ToList())
                    .SelectMany(line => line.Zip(line.Skip(1)))
                    .Where(pair => pair.First.EndBaseLine.X - pair.Second.StartBaseLine.X > Overlap * pair.First.PointSize)
                    .Where(pair => pair.Second.Width > 0.1 * pair.Second.PointSize)
                    .Select(pair => Said(pair.First) + " over " + Said(pair.Second))
        );

    void Each(Func<string, Page, IEnumerable<string>> faults)
    {
        var found = new List<string>();
        var pages = 0;
        foreach (var file in Pdfs)
        {
            var name = MadePages.NameOf(file);
            using var pdf = PdfDocument.Open(file);
            foreach (var page in pdf.GetPages())
            {
                pages++;
                found.AddRange(faults(name, page).Take(3).Select(fault => $"{name}, page {page.Number}: {fault}"));
            }
        }

        Assert.True(pages > 150);
        Assert.Empty(found);
    }

    /// <summary>The boxes of forms and fields: rectangles with an outline.</summary>
    static IEnumerable<PdfRectangle> BoxesOf(Page page) =>
        page
            .Paths.Where(path => path.IsStroked && !path.IsClipping)
            .SelectMany(path => path)
            .Where(path => path.IsDrawnAsRectangle)
            .Select(path => path.GetBoundingRectangle())
            .OfType<PdfRectangle>()
            // The sheet that a strip is drawn on is no box, nor is a box to tick.
            .Where(box => box.Width > 12 && box.Height > 8);

    static string Said(Letter letter) =>
        string.Create(CultureInfo.InvariantCulture, $"'{letter.Value}' at {letter.StartBaseLine.X:0.0}, {letter.StartBaseLine.Y:0.0}");
}
