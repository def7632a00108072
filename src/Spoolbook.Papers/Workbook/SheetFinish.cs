using System.Globalization;
using System.Xml.Linq;

namespace Spoolbook.Papers.Workbook;

/// <summary>Writes the results of formulas into one sheet, and removes what is not valid.</summary>
static class SheetFinish
{
    static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    public static string Apply(string xml, IReadOnlyDictionary<string, CellValue> caches)
    {
        var sheet = XDocument.Parse(xml, LoadOptions.PreserveWhitespace);
        foreach (var cell in sheet.Descendants(Main + "c").Where(c => c.Element(Main + "f") is not null))
        {
            WriteCache(cell, caches[cell.Attribute("r")!.Value]);
        }

        // The extensions repeat the data bars for newer programs, in a form that does not validate.
        sheet.Descendants(Main + "extLst").Remove();
        return sheet.Declaration + sheet.ToString(SaveOptions.DisableFormatting);
    }

    static void WriteCache(XElement cell, CellValue value)
    {
        cell.Elements(Main + "v").Remove();
        cell.SetAttributeValue("t", value.Number is null ? "str" : null);
        cell.Add(new XElement(Main + "v", value.Number?.ToString("R", CultureInfo.InvariantCulture) ?? value.Text ?? ""));
    }
}
