using System.Xml.Linq;
using Spoolbook.Papers.Pages;

namespace Spoolbook.Papers.Web;

/// <summary>
/// Prepares a page's tables for a screen that is too narrow: there the style sheet stacks each row as a block, with its
/// head on top and the column's head over every value. Adds what the style sheet needs for that, for every template alike.
/// Browsers still tell a screen reader of a table that is stacked, and its roles written out would not be valid HTML.
/// </summary>
internal static class NarrowTables
{
    public static void Prepare(XElement article)
    {
        foreach (var table in article.Descendants().Where(e => e.Is("table")).ToList())
        {
            NarrowTable.Prepare(table);
        }
    }
}
