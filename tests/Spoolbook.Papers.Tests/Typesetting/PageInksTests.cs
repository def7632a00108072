using CsCheck;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Schools;
using Spoolbook.Papers.Typesetting.Drawing;
using Spoolbook.Papers.Typesetting.Setup;
using Spoolbook.Shoot.Records;
using UglyToad.PdfPig.Graphics.Colors;

namespace Spoolbook.Papers.Tests.Typesetting;

/// <summary>Colours on paper: where they go, that each can be read, and that no text loses contrast.</summary>
public class PageInksTests
{
    const string Page =
        "<header><h1>Order</h1></header><h2>Cans</h2><table><thead><tr><th>Roll</th></tr></thead><tbody><tr><td>R1</td></tr></tbody>"
        + "</table>"
        + "<aside class=\"note\">Keep dry</aside><aside class=\"warning\">Fogged</aside><p class=\"muted\">Made by hand</p>";

    const string Sheet =
        ":root { --paper-head-rule: school; --paper-title-rule: school-2; --paper-table-head: school; --paper-call-out: school-2; "
        + "--paper-heading: school }";

    static readonly Gen<int> _colour = Gen.Int[0, 0xFFFFFF];

    [Fact]
    public void Any_two_colours_of_a_school_can_be_read_on_its_papers_and_keep_their_hue() =>
        Gen.Select(_colour, _colour)
            .Sample(
                (first, second) =>
                {
                    var (inks, faults) = Inks(Sheet, first, second);
                    Assert.Empty(faults);
                    Assert.All(
                        new[]
                        {
                            (first, inks.HeadRule),
                            (second, inks.TitleRule),
                            (first, inks.TableHead),
                            (second, inks.CallOut),
                            (first, inks.Heading),
                        },
                        pair => IsShadeOf(pair.Item1, pair.Item2!.Value)
                    );
                }
            );

    [Fact]
    public void A_colour_of_the_style_sheets_own_is_held_to_the_same() =>
        _colour.Sample(colour =>
            IsShadeOf(colour, Inks(FormattableString.Invariant($"a {{ --paper-heading : #{colour:X6} }}")).Inks.Heading!.Value)
        );

    [Fact]
    public void Every_letter_and_every_rule_keeps_its_contrast_with_the_paper_below_it() =>
        Gen.Select(_colour, _colour)
            .Sample(
                (first, second) =>
                {
                    using var pdf = Printed.Read(Printed.Of(Page, new PageSetup(Paper.A4) { Inks = Inks(Sheet, first, second).Inks }));
                    var page = pdf.GetPage(1);
                    Assert.All(page.Letters, letter => Assert.True(Colour(letter.Color).ContrastOnPaper >= InkColour.EnoughForText));
                    // A fill below letters could only be a band, and this page has none: nothing is printed on a colour.
                    Assert.All(page.Paths.Where(p => p.IsFilled && IsColoured(p.FillColor!)), filled =>
                        Assert.DoesNotContain(page.Letters, letter =>
                            filled.GetBoundingRectangle() is { } box
                            && letter.StartBaseLine.X > box.Left
                            && letter.StartBaseLine.X < box.Right
                            && letter.StartBaseLine.Y > box.Bottom
                            && letter.StartBaseLine.Y < box.Top
                        )
                    );
                },
                iter: 20
            );

    [Fact]
    public void Each_colour_is_in_its_place_and_nowhere_else()
    {
        var inks = new PageInks
        {
            HeadRule = 0x102030,
            TitleRule = 0x203040,
            TableHead = 0x304050,
            CallOut = 0x405060,
            Heading = 0x506070,
        };
        using var pdf = Printed.Read(Printed.Of(Page, new PageSetup(Paper.Letter) { Inks = inks }));
        var page = pdf.GetPage(1);
        var rules = page.Paths.Where(p => p.IsStroked && IsColoured(p.StrokeColor!)).Select(p => Colour(p.StrokeColor!).Rgb);
        Assert.Equal([0x203040, 0x304050], rules.Order());
        Assert.Equal([0x405060], page.Paths.Where(p => p.IsFilled && IsColoured(p.FillColor!)).Select(p => Colour(p.FillColor!).Rgb));
        Assert.Equal("Cans", string.Concat(page.Letters.Where(l => IsColoured(l.Color)).Select(l => l.Value)));
        Assert.All(page.Letters.Where(l => IsColoured(l.Color)), l => Assert.Equal(0x506070, Colour(l.Color).Rgb));
    }

    [Fact]
    public void The_rule_of_the_running_head_is_on_every_page_that_does_not_begin_with_the_title()
    {
        var inks = new PageInks { HeadRule = 0x102030 };
        using var untitled = Printed.Read(
            Printed.Of(Printed.Table(Enumerable.Repeat("row", 120)), new PageSetup(Paper.Letter) { Inks = inks })
        );
        Assert.All(untitled.GetPages(), page => Assert.Equal(1, HeadRules(page)));

        const string Titled = "<header><h1>Lab order</h1></header><p>first</p><div class=\"break\"></div><p>second</p>";
        using var titled = Printed.Read(Printed.Of(Titled, new PageSetup(Paper.Letter) { Inks = inks, HeadLeft = "Lighthouse" }));
        Assert.Equal([0, 1], titled.GetPages().Select(HeadRules));
        Assert.Equal([false, true], titled.GetPages().Select(page => page.Text.Contains("Lighthouse", StringComparison.Ordinal)));

        static int HeadRules(UglyToad.PdfPig.Content.Page page) => page.Paths.Count(p => p.IsStroked && IsColoured(p.StrokeColor!));
    }

    [Fact]
    public void A_table_has_its_bar_on_every_page_that_it_reaches()
    {
        var inks = new PageInks { TableHead = 0x304050 };
        using var pdf = Printed.Read(Printed.Of(Printed.Table(Enumerable.Repeat("row", 120)), new PageSetup(Paper.Letter) { Inks = inks }));
        Assert.True(pdf.NumberOfPages > 1);
        Assert.All(pdf.GetPages(), page => Assert.Single(page.Paths, p => p.IsStroked && IsColoured(p.StrokeColor!)));
    }

    [Fact]
    public void Without_colours_a_page_is_black_and_grey()
    {
        Assert.Equal(PageInks.Black, Inks(Sheet).Inks);
        using var pdf = Printed.Read(Printed.Of(Page));
        var page = pdf.GetPage(1);
        Assert.DoesNotContain(page.Letters, l => IsColoured(l.Color));
        Assert.DoesNotContain(page.Paths, p => (p.IsStroked && IsColoured(p.StrokeColor!)) || (p.IsFilled && IsColoured(p.FillColor!)));
        Assert.Contains(page.Paths, p => p.IsStroked && Colour(p.StrokeColor!).Rgb == Colours.Hairline);
    }

    [Fact]
    public void A_label_on_a_can_has_no_colour_even_where_headings_have()
    {
        const string Label =
            "<section class=\"sheet\" data-cols=\"2\" data-rows=\"4\"><div class=\"label\"><h1>R1</h1><h2>EXPOSED</h2><aside "
            + "class=\"note\">Keep dry</aside></div></section>";
        using var pdf = Printed.Read(Printed.Of(Label, new PageSetup(Paper.A4) { Inks = Inks(Sheet, 0x2B5F86, 0x7A3410).Inks }));
        Assert.DoesNotContain(pdf.GetPage(1).Letters, l => IsColoured(l.Color));
        Assert.DoesNotContain(pdf.GetPage(1).Paths, p => p.IsFilled && IsColoured(p.FillColor!));
    }

    [Fact]
    public void A_colour_in_a_comment_is_no_colour() =>
        Assert.Equal(PageInks.Black, Inks("/* --paper-heading: #123456; */ :root { --paper: #ffffff; } /* --paper-footer: gold").Inks);

    static (PageInks Inks, IReadOnlyList<TemplateFault> Faults) Inks(string sheet, params int[] school) =>
        PaperInks.Choose(
            new TemplateText("style.css", sheet),
            new School(default) { Colours = [.. school.Select(rgb => new Located<InkColour>(new InkColour(rgb), default))] }
        );

    static void IsShadeOf(int chosen, int printed)
    {
        var (colour, shade) = (new InkColour(chosen), new InkColour(printed));
        Assert.True(shade.ContrastOnPaper >= InkColour.EnoughForText);
        if (colour.ContrastOnPaper >= InkColour.EnoughForText)
        {
            Assert.Equal(colour, shade);
        }
        // The stronger of two channels stays stronger, and no channel gets stronger.
        int[] from = Channels(chosen),
            to = Channels(printed);
        for (var i = 0; i < 3; i++)
        {
            Assert.True(to[i] <= from[i]);
            Assert.True(from[i] < from[(i + 1) % 3] || to[i] >= to[(i + 1) % 3]);
        }
    }

    static int[] Channels(int rgb) => [rgb >> 16 & 255, rgb >> 8 & 255, rgb & 255];

    static bool IsColoured(IColor colour) => colour.ToRGBValues() is var (r, g, b) && (r != g || g != b);

    static InkColour Colour(IColor colour) =>
        colour.ToRGBValues() is var (r, g, b) ? new InkColour((Byte(r) << 16) | (Byte(g) << 8) | Byte(b)) : default;

    static int Byte(double part) => (int)Math.Round(part * 255);
}
