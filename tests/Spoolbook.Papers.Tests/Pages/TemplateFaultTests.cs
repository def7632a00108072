using Spoolbook.Papers.Pages;

namespace Spoolbook.Papers.Tests.Pages;

public class TemplateFaultTests
{
    static readonly object Facts = new
    {
        Roll = new { Name = "R03" },
        Takes = new[] { "1", "2" },
        Nothing = (string?)null,
        Markup = new Markup("<blink/>"),
    };

    [Theory]
    [InlineData("<article>\n<p>{{ rol }}</p></article>", 2, 7, "rol")]
    [InlineData("<article>\n<p>{{ roll.nam }}</p></article>", 2, 12, "nam")]
    [InlineData("<article><p>{{ takes[5] }}</p></article>", 1, 22, "5")]
    [InlineData("<article><p>{{ nothing.name }}</p></article>", 1, 24, "nothing")]
    [InlineData("<article><p>{{ takes }}</p></article>", 1, 16, "list")]
    [InlineData("<article>\n{{ for t in takes }}<p>\n{{ t }}</article>", 3, 8, "")]
    [InlineData("<article><p>{{ if }}</p></article>", 1, 19, "")]
    [InlineData("<article>\n\n  <p>a</q></article>", 3, 9, "not well-formed")]
    [InlineData("<article>{{ roll.name }}\n <p>&nbsp;</p></article>", 2, 6, "nbsp")]
    [InlineData("<article>\n  <blink>x</blink></article>", 2, 4, "<blink> is not in the vocabulary")]
    [InlineData("<article>{{ if true }}\n<p class=\"shiny\">x</p>{{ end }}</article>", 2, 2, "no class 'shiny'")]
    [InlineData("<article><p style=\"color:red\">x</p></article>", 1, 11, "no attribute 'style'")]
    [InlineData("<article>loose</article>", 1, 10, "text cannot be here")]
    [InlineData("<article><p><h1>x</h1></p></article>", 1, 14, "<h1> cannot be here in <p>")]
    [InlineData("<article><table><tr><td>x</td></tr></table></article>", 1, 18, "<tr> cannot be here in <table>")]
    [InlineData("<article><table><tbody><tr><td colspan=\"0\">x</td></tr></tbody></table></article>", 1, 29, "colspan")]
    [InlineData("<article><figure><svg viewBox=\"0 0 1 1\"/></figure></article>", 1, 11, "needs words")]
    [InlineData(
        "<article><figure aria-label=\"x\"><svg viewBox=\"0 0 1 1\"><use/></svg></figure></article>",
        1,
        57,
        "<use> cannot be drawn"
    )]
    [InlineData(
        "<article><figure aria-label=\"x\"><svg viewBox=\"0 0 1 1\"><image/></svg></figure></article>",
        1,
        57,
        "<image> needs an href"
    )]
    [InlineData(
        "<article><figure aria-label=\"x\"><svg viewBox=\"0 0 1 1\"><image href=\"https://example.org/x.png\"/></svg></figure></article>",
        1,
        57,
        "cannot be read"
    )]
    [InlineData(
        "<article><figure aria-label=\"x\"><svg viewBox=\"0 0 1 1\"><g "
            + "clip-path=\"url(https://example.org/x.svg#a)\"/></svg></figure></article>",
        1,
        57,
        "cannot be read"
    )]
    [InlineData(
        "<article><figure aria-label=\"x\"><svg viewBox=\"0 0 1 1\"><path d=\"M0 0 A1 1\"/></svg></figure></article>",
        1,
        57,
        "cannot be read"
    )]
    [InlineData("<article><p><a href=\"javascript:alert(1)\">x</a></p></article>", 1, 14, "link")]
    [InlineData("<article>\n{{ for t in takes }}<p id=\"{{ roll.name }}\">\n  {{ markup }}</p>{{ end }}</article>", 3, 6, "<blink>")]
    [InlineData("<html></html>", 1, 2, "one <article>")]
    [InlineData("<!DOCTYPE html><article/>", 1, 1, "DTD")]
    public void A_mistake_in_a_template_is_flagged_with_line_and_column(string template, int line, int column, string reason)
    {
        var result = Templates.Render(template, Facts);
        Assert.Null(result.Document);
        var fault = result.Faults[0];
        Assert.Contains(reason, fault.Reason, StringComparison.Ordinal);
        Assert.Equal(("page.html", line, column), (fault.File, fault.Line, fault.Column));
    }

    [Fact]
    public void All_unknown_elements_are_flagged_at_once()
    {
        var result = Templates.Render("<article><blink>a</blink><marquee>b</marquee></article>");
        Assert.Equal(2, result.Faults.Length);
    }

    [Fact]
    public void A_mistake_in_an_included_file_names_that_file()
    {
        var source = new Templates(
            ("page.html", "<article>\n{{ include 'head.html' title: 'x' }}</article>"),
            ("head.html", "<h1>{{ $.title }}</h1>\n  <p>{{ oops }}</p>")
        );
        var fault = Assert.Single(TemplateEngine.Render(source, "page.html", Facts).Faults);
        Assert.Equal(("head.html", 2, 9), (fault.File, fault.Line, fault.Column));
    }

    [Fact]
    public void An_unknown_element_in_an_included_file_names_that_file()
    {
        var source = new Templates(
            ("page.html", "<article>\n{{ include 'head.html' }}\n<blink>b</blink></article>"),
            ("head.html", "<h1>x</h1>\n<blink>a</blink>")
        );
        var faults = TemplateEngine.Render(source, "page.html", Facts).Faults;
        Assert.Equal(["head.html(2,2)", "page.html(3,2)"], faults.Select(f => $"{f.File}({f.Line},{f.Column})"));
    }

    [Fact]
    public void An_included_file_sees_its_arguments_and_prints_in_place()
    {
        var source = new Templates(
            ("page.html", "<article>{{ include 'head.html' title: '<b>' }}<p>after</p></article>"),
            ("head.html", "<h1>{{ $.title }} {{ roll.name }}</h1>")
        );
        var page = TemplateEngine.Render(source, "page.html", Facts).Document!;
        Assert.Equal(["<b> R03", "after"], page.Root.Elements().Select(e => e.Value));
    }

    [Fact]
    public void A_missing_template_is_a_fault()
    {
        Assert.Single(TemplateEngine.Render(new Templates(), "gone.html", Facts).Faults);
        var fault = Assert.Single(Templates.Render("<article>\n {{ include 'gone.html' }}</article>").Faults);
        Assert.Equal(2, fault.Line);
    }

    [Fact]
    public void Windows_line_ends_do_not_move_the_line()
    {
        var fault = Assert.Single(Templates.Render("<article>\r\n\r\n<blink/></article>").Faults);
        Assert.Equal((3, 2), (fault.Line, fault.Column));
    }

    [Fact]
    public void A_page_for_the_browser_keeps_its_end_tags()
    {
        var page = Templates.Page("<article><dl class=\"fields\"><div><dt>Loader</dt><dd/></div></dl><hr/></article>");
        Assert.Equal("<article><dl class=\"fields\"><div><dt>Loader</dt><dd></dd></div></dl><hr /></article>", page.ToHtml());
    }

    [Fact]
    public void A_break_in_a_value_is_a_break_in_the_browser()
    {
        var page = Templates.Page("<article><p>{{ note }}</p></article>", new { Note = "one\ntwo" });
        Assert.Equal("<article><p>one<br />two</p></article>", page.ToHtml());
    }
}
