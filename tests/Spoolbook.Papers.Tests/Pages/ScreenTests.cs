using Spoolbook.Papers.Pages;

namespace Spoolbook.Papers.Tests.Pages;

/// <summary>A template of a page that works by a script brings no other script, and nothing that loads or sends.</summary>
public sealed class ScreenTests
{
    [Theory]
    [InlineData("<div><script>alert(1)</script></div>", "<script> is not")]
    [InlineData("<div onclick=\"alert(1)\">x</div>", "no attribute 'onclick'")]
    [InlineData("<div style=\"color: red\">x</div>", "no attribute 'style'")]
    [InlineData("<div><img src=\"https://example.org/a.png\" /></div>", "<img> is not")]
    [InlineData("<div><a href=\"javascript:alert(1)\">x</a></div>", "<a> is not")]
    [InlineData("<div><form action=\"https://example.org\"></form></div>", "<form> is not")]
    [InlineData("<div><svg xmlns=\"http://www.w3.org/2000/svg\"></svg></div>", "<svg> is not")]
    public void What_could_run_load_or_send_is_refused(string template, string reason) =>
        Assert.Contains(Rendered(template).Faults, fault => fault.Reason.Contains(reason, StringComparison.Ordinal));

    [Fact]
    public void A_name_in_it_is_a_name_and_no_markup() =>
        Assert.Contains("<p>&lt;b&gt;x</p>", Rendered("<div><p>{{ name }}</p></div>").Document!.ToHtml(), StringComparison.Ordinal);

    static PageResult Rendered(string template) =>
        TemplateEngine.RenderScreen(new Templates(("page.html", template)), "page.html", new { Name = "<b>x" });
}
