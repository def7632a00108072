using System.Xml.Linq;
using CsCheck;
using Spoolbook.Papers.Wording;

namespace Spoolbook.Papers.Tests.Wording;

public class QuotingTests
{
    [Theory]
    [InlineData(
        "Write `- wind: {}` there, or `motor: E1` on the take.",
        "Write <code>- wind: {}</code> there, or <code>motor: E1</code> on the take."
    )]
    [InlineData("A name like a`b has a backtick of its own.", "A name like a`b has a backtick of its own.")]
    [InlineData("`<script>` & so on", "<code>&lt;script&gt;</code> &amp; so on")]
    [InlineData("", "")]
    public void What_a_finding_quotes_is_set_as_code(string finding, string set) => Assert.Equal(set, Quoting.Mark(finding).Xml);

    [Fact]
    public void No_text_gets_out_of_its_place_or_loses_a_letter() =>
        Gen.String[Gen.Char["`<>&\"'{ abcd"], 0, 30]
            .Sample(text =>
            {
                var read = XElement.Parse("<p>" + Quoting.Mark(text).Xml + "</p>", LoadOptions.PreserveWhitespace);
                Assert.All(read.Descendants(), element => Assert.Equal("code", element.Name.LocalName));
                var paired = text.Count(c => c == '`') % 2 == 0;
                Assert.Equal(paired ? text.Replace("`", "", StringComparison.Ordinal) : text, read.Value);
            });
}
