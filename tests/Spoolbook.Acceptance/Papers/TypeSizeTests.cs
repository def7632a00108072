using System.Text.RegularExpressions;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Spoolbook.Acceptance.Papers;

/// <summary>The sizes of letters on every paper of the sample and the awkward productions, in points, from an outside reader.</summary>
public sealed class TypeSizeTests(MadePapers made) : IClassFixture<MadePapers>
{
    /// <summary>
    /// The smallest size on a paper, and the range of most of its letters. On a sheet the smallest are the words over
    /// the fields of a form and the letters on strips and charts; a pocket card is held close, and a label in the hand
    /// (from memory: text of 7 to 9 points is read at a desk, small print goes down to 6, and to 5 where it must).
    /// </summary>
    static readonly (string Paper, double Least, double From, double To)[] _sizes =
    [
        (@"^can-labels", 5, 5, 9),
        (@"-pocket$", 5.9, 6.2, 7),
        (@"^camera-report", 6.4, 6.9, 9),
        (@"^exposure-card", 6.4, 8.4, 9),
        (@"^kit-list", 6.4, 7.4, 9),
        (@"^lab-order", 6.4, 7.3, 9), // forty cans and the cells to sign on one page
        (@"^learner-sheets", 6.4, 8.4, 9),
        (@"^log-sheets", 6.4, 7.4, 9),
        (@"^wrap-summary", 6.4, 6.75, 9), // tables of 7.47 pt at the tightest setting, 0.91,
    ];

    [Fact]
    public void No_letter_of_any_paper_is_smaller_than_its_paper_allows() => Assert.All(made.Pdfs, file =>
        {
            var least = Sizes(file).Least;
            Assert.All(Letters(file), letter =>
                Assert.True(letter.PointSize >= least - 0.01, $"{made.NameOf(file)}: '{letter.Value}' of {letter.PointSize} pt")
            );
        });

    [Fact]
    public void Most_of_a_paper_is_set_in_the_size_of_its_text() => Assert.All(made.Pdfs, file =>
        {
            var (_, _, from, to) = Sizes(file);
            var text = Drawn(file, content => content.Tag != "Figure" && !content.IsArtifact)
                .GroupBy(l => Math.Round(l.PointSize, 2))
                .MaxBy(size => size.Count())!
                .Key;
            Assert.True(text >= from - 0.01 && text <= to + 0.01, $"{made.NameOf(file)}: most letters have {text} pt");
        });

    [Fact]
    public void The_letters_of_strips_are_as_large_as_small_print()
    {
        // A strip's letters are in a figure; each take's slate is among them.
        Assert.All(made.Pdfs.Where(file => Path.GetFileName(file).StartsWith("camera-report", StringComparison.Ordinal)), file =>
        {
            var drawn = Drawn(file, content => content.Tag == "Figure");
            Assert.NotEmpty(drawn);
            Assert.All(drawn, letter =>
                Assert.True(letter.PointSize >= 6.5, $"{made.NameOf(file)}: '{letter.Value}' of {letter.PointSize} pt")
            );
        });
    }

    [Fact]
    public void A_rolls_number_is_the_largest_on_its_label_by_far() =>
        Assert.All(made.Pdfs.Where(file => Path.GetFileName(file) == "can-labels.pdf"), file =>
        {
            using var pdf = PdfDocument.Open(file);
            Assert.All(pdf.GetPages(), page =>
            {
                var sizes = page.Letters.GroupBy(l => Math.Round(l.PointSize, 1)).OrderByDescending(size => size.Key).ToList();
                // All these productions have short names. A long one gives up size to stay complete.
                Assert.True(sizes[0].Key > 2 * sizes.First(size => size.Any(l => l.Value == "X")).Key, made.NameOf(file));
                Assert.DoesNotContain(sizes[0], l => l.Value == "X");
            });
        });

    (string Paper, double Least, double From, double To) Sizes(string file) =>
        Assert.Single(_sizes.Where(size => Regex.IsMatch(Path.GetFileNameWithoutExtension(file), size.Paper)).Take(1));

    static List<Letter> Letters(string file)
    {
        using var pdf = PdfDocument.Open(file);
        return [.. pdf.GetPages().SelectMany(page => page.Letters).Where(letter => !string.IsNullOrWhiteSpace(letter.Value))];
    }

    static List<Letter> Drawn(string file, Func<MarkedContentElement, bool> which)
    {
        using var pdf = PdfDocument.Open(file);
        return
        [
            .. pdf.GetPages()
                .SelectMany(page => page.GetMarkedContents())
                .SelectMany(All)
                .Where(which)
                .SelectMany(content => content.Letters),
        ];
    }

    static IEnumerable<MarkedContentElement> All(MarkedContentElement content) => content.Children.SelectMany(All).Prepend(content);
}
