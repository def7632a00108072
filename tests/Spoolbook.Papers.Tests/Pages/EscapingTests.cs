using CsCheck;
using Spoolbook.Papers.Pages;

namespace Spoolbook.Papers.Tests.Pages;

public class EscapingTests
{
    static readonly string[] Nasty =
    [
        "<",
        ">",
        "&",
        "\"",
        "'",
        "]]>",
        "<!--",
        "-->",
        "{{",
        "}}",
        "&lt;",
        "<![CDATA[",
        "\r\n",
        "\n",
        "\t",
        "\0",
        "\u2028",
        "\uD800",
        "\uFFFE",
        "</p>",
        "<?",
    ];

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("a & b &amp; c &lt;")]
    [InlineData("{{ roll.secret }} }} {{ end }}")]
    [InlineData("*bold* _under_ | pipe | `code` # head")]
    [InlineData("]]> <!-- --> <?pi?> </td></tr></table>")]
    [InlineData("\" onclick=\"x\" ' > <")]
    [InlineData("&#x3C;b&#62;")]
    public void A_productions_text_is_printed_as_written(string value)
    {
        var page = Templates.Page("<article id=\"{{ value }}\"><p>{{ value }}</p></article>", new { Value = value });
        Assert.Equal(value, page.Root.Elements().Single().Value);
        Assert.Equal(value, page.Root.Attribute("id")!.Value);
    }

    [Fact]
    public void Whatever_is_written_on_set_breaks_no_page()
    {
        var hostile = Gen.OneOf(Gen.Int[0, Nasty.Length - 1].Select(i => Nasty[i]), Gen.Char.Select(c => c.ToString()), Gen.String[0, 5]);
        hostile
            .Array[0, 12]
            .Select(string.Concat)
            .Sample(
                value =>
                {
                    var page = Templates.Page("<article lang=\"{{ value }}\"><p>{{ value }}</p></article>", new { Value = value });
                    var paragraph = page.Root.Elements().Single();
                    return !paragraph.HasElements
                        && paragraph.Value == AsPrinted(value)
                        && page.Root.Attribute("lang")!.Value == AsPrinted(value);
                },
                iter: 5000
            );
    }

    [Fact]
    public void A_line_end_in_a_remark_becomes_a_break()
    {
        var page = Templates.Page("<article><p>{{ value }}</p></article>", new { Value = "one\r\ntwo\nthree\rfour" });
        Assert.Equal("one\u2028two\u2028three\u2028four", page.Root.Value);
    }

    [Fact]
    public void Only_pictures_of_our_own_making_are_printed_unescaped()
    {
        var facts = new { Own = new Markup("<strong>R03</strong>"), Theirs = "<strong>R03</strong>" };
        var page = Templates.Page("<article><p>{{ own }}</p><p>{{ theirs }}</p></article>", facts);
        Assert.Equal([1, 0], page.Root.Elements().Select(p => p.Elements().Count()));
    }

    /// <summary>The same rule again, character by character, without the engine.</summary>
    static string AsPrinted(string value)
    {
        var text = new System.Text.StringBuilder();
        var folded = value.Replace("\r\n", "\n", StringComparison.Ordinal);
        for (var i = 0; i < folded.Length; i++)
        {
            var c = folded[i];
            var pair = char.IsHighSurrogate(c) && i + 1 < folded.Length && char.IsLowSurrogate(folded[i + 1]);
            if (pair)
            {
                text.Append(c).Append(folded[++i]);
            }
            else if (c is '\n' or '\r' or '\u0085' or '\u2028' or '\u2029')
            {
                text.Append('\u2028');
            }
            else if (c == '\t')
            {
                text.Append(' ');
            }
            else if (c < ' ' || c is >= '\u007F' and <= '\u009F' || char.IsSurrogate(c) || c >= '\uFFFE')
            {
                text.Append('\uFFFD');
            }
            else
            {
                text.Append(c);
            }
        }
        return text.ToString();
    }
}
