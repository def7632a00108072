using System.Globalization;
using System.Xml.Linq;

namespace Spoolbook.Papers.Workbook;

/// <summary>Writes into a table the formulas of its columns, so that a row typed below it gets them too.</summary>
static class TableFinish
{
    static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    public static string Of(string xml, string sheet)
    {
        var table = XDocument.Parse(xml, LoadOptions.PreserveWhitespace);
        var corners = table.Root!.Attribute("ref")!.Value.Split(':');
        var (first, last) = (RowOf(corners[0]) + 1, RowOf(corners[1]));
        var formulas = XDocument.Parse(sheet).Descendants(Main + "f")
            .Select(f => (Address: f.Parent!.Attribute("r")!.Value, Formula: f.Value))
            .Where(f => RowOf(f.Address) >= first && RowOf(f.Address) <= last)
            .ToLookup(f => f.Address.TrimEnd([.. "0123456789"]), f => f.Formula, StringComparer.Ordinal);
        foreach (var (column, i) in table.Descendants(Main + "tableColumn").Select((c, i) => (c, i)))
        {
            var cells = formulas[Letters(i)].ToList();
            if (cells.Count == last - first + 1 && cells.Distinct(StringComparer.Ordinal).Count() == 1)
            {
                column.AddFirst(new XElement(Main + "calculatedColumnFormula", cells[0]));
            }
        }

        return table.Declaration + table.ToString(SaveOptions.DisableFormatting);
    }

    static int RowOf(string address) => int.Parse(address.TrimStart([.. "ABCDEFGHIJKLMNOPQRSTUVWXYZ"]), CultureInfo.InvariantCulture);

    // All our tables start in the first column.
    static string Letters(int column) => column < 26 ? ((char)('A' + column)).ToString() : ((char)('A' + (column / 26) - 1)).ToString() + (char)('A' + (column % 26));
}
