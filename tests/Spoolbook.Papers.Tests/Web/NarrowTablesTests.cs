using System.Xml.Linq;
using Spoolbook.Papers.Web;

namespace Spoolbook.Papers.Tests.Web;

public class NarrowTablesTests
{
    const string LongText = "Weighing the salt in the shed, the needle of the scale, and her hand";

    [Fact]
    public void In_a_table_too_wide_for_a_phone_each_value_has_the_head_of_its_column()
    {
        var article = Wide("<tr><th scope=\"row\">7/B</th><td>" + LongText + "</td><td>10+10</td><td>G</td></tr>");

        NarrowTables.Prepare(article);

        Assert.Equal("stacks", (string?)Table(article).Attribute("class"));
        Assert.Equal(
            [null, "Remarks", "Film exposed", "Mark", "Cinematographer", "Filter"],
            Cells(article).Select(c => (string?)c.Attribute("data-head"))
        );
        Assert.Equal(
            ["quarter", "most", "quarter", "quarter", "half", "quarter"],
            Cells(article).Select(c => (string?)c.Attribute("class"))
        );
    }

    [Fact]
    public void Its_rows_heads_and_cells_stay_elements_of_a_table_and_need_no_roles()
    {
        var article = Wide("<tr><th scope=\"row\">7/B</th><td>" + LongText + "</td><td>10+10</td><td>G</td></tr>");

        NarrowTables.Prepare(article);

        Assert.Equal("stacks", (string?)Table(article).Attribute("class"));
        Assert.DoesNotContain(article.DescendantsAndSelf(), e => e.Attribute("role") is not null);
    }

    [Fact]
    public void A_head_of_the_row_that_is_long_has_a_line_of_its_own_and_so_has_one_over_several_columns()
    {
        var article = Wide(
            "<tr><th scope=\"row\">Total of all rolls, practice apart</th><td>"
                + LongText
                + "</td><td>10+10</td><td>G</td></tr><tr class=\"total\"><th scope=\"row\" "
                + "colspan=\"2\">All</th><td>20+20</td><td></td></tr>"
        );

        NarrowTables.Prepare(article);

        Assert.Equal(
            ["whole", "whole", "quarter", "quarter", "half", "quarter", null, "quarter", "quarter", "half", "quarter"],
            Cells(article).Select(c => (string?)c.Attribute("class"))
        );
        Assert.Equal(
            [
                null,
                "Remarks",
                "Film exposed",
                "Mark",
                "Cinematographer",
                "Filter",
                null,
                "Film exposed",
                "Mark",
                "Cinematographer",
                "Filter",
            ],
            Cells(article).Select(c => (string?)c.Attribute("data-head"))
        );
    }

    [Fact]
    public void A_table_that_fits_stays_as_it_is()
    {
        var article = XElement.Parse(
            "<article><table><thead><tr><th>Roll</th><th>Feet</th></tr></thead><tbody><tr><th>R1</th><td>100</td></tr></tbody></table>"
                + "</article>"
        );
        var before = article.ToString();

        NarrowTables.Prepare(article);

        Assert.Equal(before, article.ToString());
    }

    [Fact]
    public void A_cell_beside_several_rows_leaves_the_table_whole_in_a_box_of_its_own()
    {
        var article = Wide(
            "<tr><th rowspan=\"2\">7</th><td>"
                + LongText
                + "</td><td>10+10</td><td>G</td></tr><tr><td>"
                + LongText
                + "</td><td>1+10</td><td>G</td></tr>"
        );

        NarrowTables.Prepare(article);

        Assert.Equal("slides", (string?)Table(article).Attribute("class"));
        Assert.DoesNotContain(article.Descendants(), e => e.Attribute("data-head") is not null);
    }

    [Fact]
    public void Of_numbered_writing_lines_only_the_first_has_its_heads()
    {
        const string Line = "<tr class=\"blank\"><td>1</td><td></td><td></td><td></td></tr>";
        var article = Wide(Line + Line + Line + "<tr><td>4</td><td>" + LongText + "</td><td></td><td></td></tr>" + Line);

        NarrowTables.Prepare(article);

        Assert.Equal(
            ["blank form", "blank again", "blank again", null, "blank form"],
            article.Descendants("tbody").Elements().Select(e => (string?)e.Attribute("class"))
        );
    }

    // Two more columns, left empty, make it too wide.
    static XElement Wide(string rows) =>
        XElement.Parse(
            "<article><table><thead><tr><th rowspan=\"2\">Slate</th><th rowspan=\"2\">Remarks</th><th>Film</th><th "
                + "rowspan=\"2\">Mark</th><th rowspan=\"2\">Cinematographer</th><th "
                + "rowspan=\"2\">Filter</th></tr><tr><th>exposed</th></tr></thead><tbody>"
                + rows.Replace("</tr>", "<td></td><td></td></tr>", StringComparison.Ordinal)
                + "</tbody></table></article>"
        );

    static XElement Table(XElement article) => article.Element("table")!;

    static IEnumerable<XElement> Cells(XElement article) => article.Descendants("tbody").Elements("tr").Elements();
}
