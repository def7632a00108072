using System.Text;
using System.Xml;
using CsCheck;
using Spoolbook.Papers.Pages;

namespace Spoolbook.Papers.Tests.Pages;

public class XmlDepthTests
{
    [Theory]
    [InlineData("<a><b><c/></b></a>", 2, false)]
    [InlineData("<a><b><c></c></b></a>", 2, true)]
    [InlineData("<a t='>'><b t=\"/>\"><c t='\"'/></b></a>", 2, false)]
    [InlineData("<a><b/><b/><b/></a>", 1, false)]
    [InlineData("<a><!-- </a></a> --><b/></a>", 3, true)]
    [InlineData("<a><b", 3, true)]
    public void A_text_is_read_for_its_depth_only_where_its_tags_do_not_say_enough(string xml, int most, bool reads) =>
        Assert.Equal(reads, XmlDepth.MayBeTooDeep(xml, most));

    [Fact]
    public void What_the_tags_let_pass_an_xml_reader_lets_pass_too() =>
        Gen.Int[0, 4].List[1, 40].Sample(steps =>
        {
            var xml = Xml(steps);
            using var reader = XmlReader.Create(new StringReader(xml));
            var tooDeep = XmlDepth.TooDeep(reader, 5) is not null;
            Assert.True(XmlDepth.MayBeTooDeep(xml, 5) || !tooDeep, xml);
        });

    // Opens, closes, and writes what looks like a tag into values, texts and comments.
    static string Xml(List<int> steps)
    {
        var xml = new StringBuilder("<a>");
        var open = 0;
        foreach (var step in steps)
        {
            switch (step)
            {
                case 0 or 1:
                    xml.Append(step == 0 ? "<b t='/>'>" : "<b t=\"'>\" u='x'>");
                    open++;
                    break;
                case 2 when open > 0:
                    xml.Append("</b >");
                    open--;
                    break;
                case 3:
                    xml.Append("<i u='/'/>/> text > ");
                    break;
                default:
                    xml.Append("<!--</b></b>-->");
                    break;
            }
        }

        return xml.Append(string.Concat(Enumerable.Repeat("</b>", open))).Append("</a>").ToString();
    }
}
