using System.Text.RegularExpressions;
using CsCheck;
using Spoolbook.Papers.Typesetting.Setup;

namespace Spoolbook.Papers.Tests.Typesetting;

public partial class TightnessTests
{
    [GeneratedRegex(@"row\d+\.")]
    private static partial Regex Row();

    static string Rows(int count) => Printed.Table(Enumerable.Range(1, count).Select(n => FormattableString.Invariant($"row{n}.")));

    // The size of the figures in the rows; a table's head has another.
    static double Size(UglyToad.PdfPig.PdfDocument pdf) =>
        Printed.BodyLetters(pdf.GetPage(1)).Where(l => char.IsDigit(l.Value[0])).Min(l => l.PointSize);

    [Fact]
    public void A_few_rows_too_many_are_set_a_little_tighter_instead_of_on_a_second_sheet()
    {
        using var full = Printed.Read(Printed.Of(Rows(40)));
        using var over = Printed.Read(Printed.Of(Rows(53)));

        Assert.Equal((1, 1), (full.NumberOfPages, over.NumberOfPages));
        Assert.InRange(Size(over) / Size(full), 0.9, 0.98);
        Assert.EndsWith("53row53.", Printed.Body(over.GetPage(1)), StringComparison.Ordinal);
    }

    // 7.6 pt as a rule.
    [Fact]
    public void A_compact_table_gets_a_second_sheet_before_it_is_hard_to_read() =>
        Gen.Int[40, 90]
            .Sample(
                count =>
                {
                    using var pdf = Printed.Read(
                        Printed.Of(Rows(count).Replace("<table>", "<table class=\"compact\">", StringComparison.Ordinal))
                    );
                    Assert.InRange(Size(pdf), 7.3, 7.6);
                },
                iter: 15
            );

    // A report's takes are 9 pt where they fit, and no page more is printed for it.
    [Fact]
    public void A_fitted_table_is_as_large_as_the_white_of_the_last_page_lets_it()
    {
        string Table(int count, string look) => Rows(count).Replace("<table>", $"<table class=\"{look}\">", StringComparison.Ordinal);
        Gen.Int[5, 110]
            .Sample(
                count =>
                {
                    using var compact = Printed.Read(Printed.Of(Table(count, "compact")));
                    using var fitted = Printed.Read(Printed.Of(Table(count, "fitted")));
                    Assert.Equal(compact.NumberOfPages, fitted.NumberOfPages);
                    Assert.InRange(Size(fitted), Size(compact) - 0.01, 9.01);
                },
                iter: 20
            );
        using var few = Printed.Read(Printed.Of(Table(20, "fitted")));
        Assert.Equal(9, Size(few), 0.01);
    }

    [Fact]
    public void The_white_between_blocks_gives_way_before_the_letters_do()
    {
        var blocks = string.Concat(Enumerable.Range(1, 41).Select(n => FormattableString.Invariant($"<p>block{n}.</p>")));
        using var few = Printed.Read(Printed.Of("<p>0</p>"));
        using var pdf = Printed.Read(Printed.Of(blocks));

        Assert.Equal(1, pdf.NumberOfPages);
        Assert.Equal(Size(few), Size(pdf), 0.001);
    }

    [Theory]
    [InlineData(70)]
    [InlineData(400)]
    public void A_last_page_that_is_worth_its_sheet_and_one_of_many_are_left_as_they_are(int rows)
    {
        using var one = Printed.Read(Printed.Of(Rows(1)));
        using var pdf = Printed.Read(Printed.Of(Rows(rows)));
        Assert.True(pdf.NumberOfPages > 1);
        Assert.Equal(Size(one), Size(pdf), 0.001);
    }

    [Fact]
    public void A_page_that_the_template_asked_for_is_not_saved()
    {
        using var pdf = Printed.Read(Printed.Of("<p>1</p><div class=\"break\"></div><p>2</p>"));
        using var one = Printed.Read(Printed.Of("<p>1</p>"));
        Assert.Equal(2, pdf.NumberOfPages);
        Assert.Equal(Size(one), Size(pdf), 0.001);
    }

    [Fact]
    public void However_tight_no_row_is_lost_or_repeated_and_no_letter_shrinks_by_a_tenth() =>
        Gen.Int[1, 140]
            .Sample(
                count =>
                {
                    using var one = Printed.Read(Printed.Of(Rows(1)));
                    using var pdf = Printed.Read(Printed.Of(Rows(count), new PageSetup(Paper.A4)));
                    var all = string.Concat(pdf.GetPages().SelectMany(page => page.Letters).Select(l => l.Value));
                    Assert.Equal(
                        Enumerable.Range(1, count).Select(n => FormattableString.Invariant($"row{n}.")),
                        Row().Matches(all).Select(m => m.Value)
                    );
                    Assert.True(Size(pdf) > 0.9 * Size(one));
                },
                iter: 25
            );
}
