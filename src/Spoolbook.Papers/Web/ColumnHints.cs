using System.Globalization;
using System.Xml.Linq;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting.Layout;

namespace Spoolbook.Papers.Web;

/// <summary>
/// Copies a column's hints to its cells: a browser takes width and background from a <c>col</c>, but not the alignment
/// of figures, nor that a line must not break.
/// </summary>
internal static class ColumnHints
{
    public static void Carry(XElement article)
    {
        foreach (
            var grid in article
                .Descendants()
                .Where(e => e.Is("table"))
                .Select(table => new TableGrid(table, Medium.Screen))
                .Where(g => g.Columns.Count > 0)
        )
        {
            // The width of a form's column is for paper alone: a screen has its own.
            foreach (var column in grid.Columns.Where(column => column.Attribute("data-width") is not null))
            {
                column.SetAttributeValue("style", "--width: " + InPoints(column));
            }

            foreach (var cell in grid.Rows.SelectMany(row => row.Cells).Where(c => c.ColumnSpan == 1))
            {
                string[] classes = [.. cell.Element.Classes(), .. grid.Hint(cell.Column)?.Classes() ?? []];
                if (classes.Length > 0)
                {
                    cell.Element.SetAttributeValue("class", string.Join(' ', classes.Distinct()));
                }
            }
        }
    }

    // A plain number is points in a template, and nothing to a browser.
    static string InPoints(XElement column) =>
        string.Create(CultureInfo.InvariantCulture, $"{TemplateLength.Points((string?)column.Attribute("data-width"), 0):0.##}pt");
}
