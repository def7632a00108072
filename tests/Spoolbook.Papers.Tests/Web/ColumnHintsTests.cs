using System.Xml.Linq;
using Spoolbook.Papers.Web;

namespace Spoolbook.Papers.Tests.Web;

public class ColumnHintsTests
{
    [Fact]
    public void A_cell_is_aligned_by_its_column_and_one_over_several_by_itself()
    {
        var article = XElement.Parse(
            "<article><table><colgroup><col class=\"nowrap\"/><col "
                + "class=\"num\"/><col/></colgroup><thead><tr><th>Roll</th><th>Feet</th><th>Remarks</th></tr></thead><tbody><tr "
                + "class=\"group\"><th colspan=\"3\">All</th></tr><tr><th rowspan=\"2\">R1</th><td>100</td><td "
                + "class=\"muted\">wound</td></tr><tr><td class=\"strong\">61</td><td>cut</td></tr></tbody></table></article>"
        );

        ColumnHints.Carry(article);

        Assert.Equal(
            ["nowrap", "num", null, null, "nowrap", "num", "muted", "strong num", null],
            article.Descendants().Where(e => e.Name.LocalName is "th" or "td").Select(e => (string?)e.Attribute("class"))
        );
    }
}
