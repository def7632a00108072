using System.Xml.Linq;
using Spoolbook.Papers.Web;

namespace Spoolbook.Papers.Tests.Web;

/// <summary>A keyboard reaches what scrolls sideways, and hears what it is.</summary>
public sealed class ScrollingTests
{
    [Theory]
    [InlineData("<figure class='wide'><svg><title>Roll W1 drawn to scale</title></svg></figure>", "Roll W1 drawn to scale")]
    [InlineData(
        "<figure class='only-screen phone'><svg><title>x</title></svg><figcaption>Where the\n film went</figcaption></figure>",
        "Where the film went"
    )]
    [InlineData("<table class='slides'><caption>The days</caption></table>", "The days")]
    [InlineData("<section><h2>Loads</h2><table class='slides'><tr><td>1</td></tr></table></section>", "Loads")]
    public void What_scrolls_is_reached_and_named(string written, string name)
    {
        var article = XElement.Parse($"<article>{written}</article>");

        Scrolling.Prepare(article);

        var reached = Assert.Single(article.Descendants(), e => e.Attribute("tabindex") is not null);
        Assert.Equal(("0", name), ((string?)reached.Attribute("tabindex"), (string?)reached.Attribute("aria-label")));
    }

    [Fact]
    public void What_does_not_scroll_is_no_stop_on_the_way()
    {
        var article = XElement.Parse(
            "<article><figure class='mark'><svg><title>A school</title></svg></figure><table class='stacks'/></article>"
        );

        Scrolling.Prepare(article);

        Assert.DoesNotContain(article.Descendants(), e => e.Attribute("tabindex") is not null);
    }
}
