using System.Globalization;
using CsCheck;
using Spoolbook.Papers.Typesetting;
using Spoolbook.Papers.Typesetting.Setup;

namespace Spoolbook.Papers.Tests.Typesetting;

public class LayoutTests
{
    static IEnumerable<string> Rows(int count) => Enumerable.Range(1, count).Select(n => FormattableString.Invariant($"row{n}."));

    [Theory]
    [InlineData(Paper.Letter, 612, 792)]
    [InlineData(Paper.A4, 595.276, 841.89)]
    [InlineData(Paper.A6, 297.638, 419.528)]
    public void A_page_has_the_size_of_its_paper(Paper paper, double width, double height)
    {
        using var pdf = Printed.Read(Printed.Of("<p>x</p>", new PageSetup(paper)));
        Assert.Equal(width, pdf.GetPage(1).Width, 0.01);
        Assert.Equal(height, pdf.GetPage(1).Height, 0.01);
        using var turned = Printed.Read(Printed.Of("<p>x</p>", new PageSetup(paper) { Landscape = true }));
        Assert.Equal(height, turned.GetPage(1).Width, 0.01);
    }

    [Fact]
    public void The_head_of_a_table_is_on_each_of_its_pages()
    {
        using var pdf = Printed.Read(Printed.Of(Printed.Table(Rows(200))));
        Assert.True(pdf.NumberOfPages >= 3);
        Assert.All(pdf.GetPages(), page => Assert.StartsWith("TakeRemarks", Printed.Body(page), StringComparison.Ordinal));
    }

    [Fact]
    public void Of_a_row_of_pictures_none_is_alone_on_the_last_page()
    {
        static string Picture(int n) =>
            string.Create(
                CultureInfo.InvariantCulture,
                $"<figure class=\"wide\" aria-label=\"{n}\"><svg viewBox=\"0 0 540 50\">"
                    + $"<text x=\"0\" y=\"20\">picture{n}.</text></svg></figure>"
            );
        var onAPage = 0;
        for (var count = 3; count < 40; count++)
        {
            using var pdf = Printed.Read(Printed.Of(string.Concat(Enumerable.Range(1, count).Select(Picture))));
            var last = Printed.Body(pdf.GetPage(pdf.NumberOfPages));
            Assert.Contains(FormattableString.Invariant($"picture{count - 1}."), last, StringComparison.Ordinal);
            onAPage = pdf.NumberOfPages == 1 ? count : onAPage;
        }

        Assert.InRange(onAPage, 3, 38);
    }

    [Fact]
    public void Every_page_says_which_of_how_many_it_is()
    {
        var setup = new PageSetup(Paper.A4)
        {
            HeadLeft = "The Lighthouse",
            HeadRight = "Roll R03",
            FootLeft = "Camera report",
            Stamp = "DRAFT",
        };
        using var pdf = Printed.Read(Printed.Of(Printed.Table(Rows(200)), setup));
        var pages = pdf.NumberOfPages;
        Assert.All(pdf.GetPages(), page =>
        {
            var text = string.Concat(page.Letters.Select(l => l.Value));
            Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"Page {page.Number} of {pages}"), text, StringComparison.Ordinal);
            Assert.Contains("The Lighthouse", text, StringComparison.Ordinal);
            Assert.Contains("Roll R03", text, StringComparison.Ordinal);
            Assert.Contains("Camera report", text, StringComparison.Ordinal);
            Assert.Equal(2, text.Split("DRAFT").Length - 1);
        });
    }

    [Fact]
    public void No_row_is_lost_split_or_repeated()
    {
        var rows = Gen.Select(Gen.Int[1, 160], Gen.Int[0, 40], Gen.Bool);
        rows.Sample(
            (count, words, grid) =>
            {
                var remark = string.Concat(Enumerable.Repeat(" fog", words));
                var table = Printed.Table(Rows(count).Select((r, i) => i % 3 == 0 ? r + remark : r));
                using var pdf = Printed.Read(
                    Printed.Of(
                        grid ? table.Replace("<table>", "<table class=\"grid\">", StringComparison.Ordinal) : table,
                        new PageSetup(Paper.A6)
                    )
                );
                var all = string.Concat(
                    pdf.GetPages().Select(page => Printed.Body(page).Replace("TakeRemarks", "", StringComparison.Ordinal))
                );
                var at = 0;
                for (var n = 1; n <= count; n++)
                {
                    var found = all.IndexOf(FormattableString.Invariant($"{n}row{n}."), at, StringComparison.Ordinal);
                    if (found < 0)
                    {
                        return false;
                    }

                    at = found + 1;
                }
                return all.Split("fog").Length - 1 == words * ((count + 2) / 3);
            },
            iter: 40
        );
    }

    [Fact]
    public void A_row_taller_than_a_page_is_torn_rather_than_cut_off()
    {
        var words = string.Join(' ', Enumerable.Range(1, 3000).Select(n => FormattableString.Invariant($"w{n}")));
        using var pdf = Printed.Read(Printed.Of(Printed.Table([words, "last"])));
        var all = string.Concat(pdf.GetPages().Select(Printed.Body));
        Assert.All(Enumerable.Range(1, 3000), n => Assert.Contains(FormattableString.Invariant($"w{n}"), all, StringComparison.Ordinal));
        Assert.EndsWith("2last", all, StringComparison.Ordinal);
        AssertInsideMargins(pdf);
    }

    [Fact]
    public void A_column_that_takes_the_rest_leaves_the_others_as_wide_as_what_they_hold()
    {
        static double Mark(string hint)
        {
            using var pdf = Printed.Read(
                Printed.Of(
                    $"<table><colgroup><col class=\"num\"/><col "
                        + $"class=\"nowrap\"/><col{hint}/></colgroup><tbody><tr><td>31+12</td><td>G</td><td>wound</td></tr></tbody></table>"
                )
            );
            return pdf.GetPage(1).Letters.First(l => l.Value == "G").StartBaseLine.X;
        }

        Assert.InRange(Mark(" class=\"rest\""), 40, 90);
        Assert.True(Mark("") > 150);
    }

    [Fact]
    public void A_heading_is_never_last_on_its_page()
    {
        for (var lines = 40; lines < 70; lines++)
        {
            var filler = string.Concat(Enumerable.Repeat("<ul><li>a</li></ul>", lines));
            using var pdf = Printed.Read(Printed.Of(filler + "<h2>Heading</h2>" + Printed.Table(Rows(5))));
            Assert.All(pdf.GetPages(), page => Assert.False(Printed.Body(page).EndsWith("Heading", StringComparison.Ordinal)));
        }
    }

    [Fact]
    public void What_is_kept_together_is_on_one_page()
    {
        for (var lines = 20; lines < 60; lines += 3)
        {
            var filler = string.Concat(Enumerable.Repeat("<p>a</p>", lines));
            using var pdf = Printed.Read(
                Printed.Of(filler + "<section class=\"keep\"><p>first</p><p>b</p><p>b</p><p>b</p><p>last</p></section>")
            );
            int PageOf(string word) => pdf.GetPages().First(page => Printed.Body(page).Contains(word, StringComparison.Ordinal)).Number;
            Assert.Equal(PageOf("first"), PageOf("last"));
        }
    }

    [Fact]
    public void What_is_too_tall_to_be_kept_together_leaves_no_page_half_empty()
    {
        var table = Printed.Table(Rows(150));
        using var free = Printed.Read(Printed.Of("<p>a</p>" + table));
        using var kept = Printed.Read(Printed.Of("<p>a</p><section class=\"keep\">" + table + "</section>"));

        Assert.True(free.NumberOfPages > 2);
        Assert.Equal(free.GetPages().Select(Printed.Body), kept.GetPages().Select(Printed.Body));
    }

    [Fact]
    public void A_kept_section_that_would_leave_half_a_page_white_comes_apart_at_a_subheading()
    {
        const string Section = "<section class=\"keep\"><h2>Stock</h2>{0}<h3>Ends</h3>{1}</section>";
        for (var lines = 2; lines < 40; lines++)
        {
            var before = string.Concat(Enumerable.Repeat("<ul><li>a</li></ul>", lines));
            var section = string.Format(CultureInfo.InvariantCulture, Section, Printed.Table(Rows(14)), Printed.Table(Rows(14)));
            using var pdf = Printed.Read(Printed.Of(before + section));
            var pages = pdf.GetPages().Select(page => string.Concat(page.Letters.Select(l => l.Value))).ToList();
            var white = Printed.BodyLetters(pdf.GetPage(1)).Min(l => l.StartBaseLine.Y) / pdf.GetPage(1).Height;

            // All of a part is with its heading, and a page that is left before the section's end is mostly full.
            Assert.Contains("14row14.", pages.Single(p => p.Contains("Stock", StringComparison.Ordinal)), StringComparison.Ordinal);
            Assert.Contains("14row14.", pages.Single(p => p.Contains("Ends", StringComparison.Ordinal)), StringComparison.Ordinal);
            Assert.True(pages.Count == 1 || white < 0.45, $"{lines} lines leave {white:0.00} of the page white");
        }
    }

    [Fact]
    public void A_kept_section_without_subheadings_stays_whole_however_white_its_page()
    {
        var before = string.Concat(Enumerable.Repeat("<ul><li>a</li></ul>", 20));
        using var pdf = Printed.Read(Printed.Of(before + $"<section class=\"keep\"><h2>Cost</h2>{Printed.Table(Rows(35))}</section>"));

        Assert.DoesNotContain("Cost", Printed.Body(pdf.GetPage(1)), StringComparison.Ordinal);
    }

    [Fact]
    public void Words_that_belong_together_are_on_one_line()
    {
        for (var letters = 60; letters < 120; letters += 3)
        {
            var text = $"<p>{new string('a', letters)} <span class=\"nowrap\">100+00 of 100+00 ft</span></p>";
            using var pdf = Printed.Read(Printed.Of(text));
            var figures = Printed.BodyLetters(pdf.GetPage(1)).Where(l => l.Value is not ("a" or " ")).ToList();

            Assert.Single(figures.Select(l => Math.Round(l.StartBaseLine.Y)).Distinct());
        }
    }

    [Fact]
    public void No_row_of_a_table_is_alone_at_the_foot_of_a_page_or_at_the_top_of_the_next()
    {
        for (var lines = 30; lines < 60; lines++)
        {
            var before = string.Concat(Enumerable.Repeat("<ul><li>a</li></ul>", lines));
            using var pdf = Printed.Read(Printed.Of(before + Printed.Table(Rows(6))));

            Assert.All(pdf.GetPages(), page => Assert.NotEqual(1, Printed.Body(page).Split("row").Length - 1));
        }
    }

    [Fact]
    public void A_page_break_breaks_the_page_once()
    {
        using var pdf = Printed.Read(Printed.Of("<p>a</p><div class=\"break\"></div><section class=\"page\"><p>b</p></section><p>c</p>"));
        Assert.Equal(["a", "bc"], pdf.GetPages().Select(Printed.Body));
    }

    [Fact]
    public void A_word_wider_than_its_column_is_broken_and_nothing_leaves_the_page()
    {
        var word = string.Concat(Enumerable.Repeat("Gelatinefilterhalter", 20));
        var row = string.Concat(Enumerable.Repeat($"<td>{word}</td>", 8));
        using var pdf = Printed.Read(
            Printed.Of(
                $"<h1>{word}</h1><p>{word}</p><table><tbody><tr>{row}</tr></tbody></table><dl class=\"fields "
                    + $"cols-4\"><div><dt>{word}</dt><dd>{word}</dd></div></dl>"
            )
        );
        var all = string.Concat(pdf.GetPages().Select(Printed.Body));
        Assert.Equal(12 * word.Length, all.Length);
        AssertInsideMargins(pdf);
    }

    [Fact]
    public void Whatever_is_set_stays_inside_the_margins()
    {
        var cell = Gen.Char["abcdefgh -/.,WMÅ"].Array[0, 60].Select(chars => new string(chars));
        Gen.Select(cell.Array[1, 10], Gen.Int[1, 8])
            .Sample(
                (texts, rows) =>
                {
                    var row = "<tr>" + string.Concat(texts.Select(t => $"<td>{t}</td>")) + "</tr>";
                    using var pdf = Printed.Read(
                        Printed.Of("<table class=\"compact\"><tbody>" + string.Concat(Enumerable.Repeat(row, rows)) + "</tbody></table>")
                    );
                    AssertInsideMargins(pdf);
                    return true;
                },
                iter: 100
            );
    }

    [Fact]
    public void Figures_of_a_column_end_at_one_line_and_have_digits_of_one_width()
    {
        using var pdf = Printed.Read(
            Printed.Of(
                "<table><colgroup><col "
                    + "class=\"num\"/><col/></colgroup><tbody><tr><td>111</td><td>x</td></tr><tr><td>888</td><td>x</td></tr></tbody>"
                    + "</table>"
            )
        );
        var digits = pdf.GetPage(1).Letters.Where(l => l.Value is "1" or "8" && l.StartBaseLine.Y is > 60 and < 740).ToList();
        Assert.Equal(6, digits.Count);
        for (var i = 0; i < 3; i++)
        {
            Assert.Equal(digits[i].StartBaseLine.X, digits[i + 3].StartBaseLine.X, 0.01);
        }
    }

    [Fact]
    public void Labels_are_in_their_grid()
    {
        var labels = string.Concat(
            Enumerable.Range(1, 12).Select(n => FormattableString.Invariant($"<div class=\"label\"><p>L{n}.</p></div>"))
        );
        var sheet =
            $"<section class=\"sheet\" data-cols=\"2\" data-rows=\"5\" data-width=\"4in\" data-height=\"2in\" data-top=\"0.5in\" "
            + $"data-left=\"0.25in\" data-skip=\"1\">{labels}</section>";
        using var pdf = Printed.Read(Printed.Of(sheet));
        Assert.Equal(2, pdf.NumberOfPages);
        var first = pdf.GetPage(1).Letters.Where(l => l.Value == "L").ToList();
        Assert.Equal(9, first.Count);
        // The first label was used before, so the first one printed is at the top of the second column.
        Assert.Equal(72 * 4.25 + 7, first[0].StartBaseLine.X, 0.5);
        Assert.InRange(first[0].StartBaseLine.Y, 792 - 36 - 25, 792 - 36 - 7);
        Assert.Equal(72 * 0.25 + 7, first[1].StartBaseLine.X, 0.5);
        Assert.DoesNotContain("Page", string.Concat(pdf.GetPage(1).Letters.Select(l => l.Value)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_label_too_full_is_set_smaller_and_then_warned_of()
    {
        PdfResult Label(int words) =>
            Printed.Of(
                "<section class=\"sheet\" data-cols=\"3\" data-rows=\"10\"><div class=\"label\"><p>"
                    + string.Join(' ', Enumerable.Repeat("word", words))
                    + "</p></div></section>"
            );
        Assert.Empty(Label(40).Warnings);
        Assert.Equal(PageWarningKind.Overflow, Assert.Single(Label(400).Warnings).Kind);
    }

    static void AssertInsideMargins(UglyToad.PdfPig.PdfDocument pdf)
    {
        foreach (var page in pdf.GetPages())
        {
            Assert.All(page.Letters, l => Assert.InRange(l.StartBaseLine.X, 39.9, page.Width - 39.9));
            Assert.All(page.Letters.Where(l => l.Value != " "), l => Assert.InRange(l.EndBaseLine.X, 39.9, page.Width - 39.5));
            Assert.All(page.Letters, l => Assert.InRange(l.StartBaseLine.Y, 29, page.Height - 29));
        }
    }
}
