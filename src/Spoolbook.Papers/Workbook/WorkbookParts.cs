using System.Xml.Linq;

namespace Spoolbook.Papers.Workbook;

/// <summary>Which part of the package has which sheet.</summary>
static class WorkbookParts
{
    static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    static readonly XNamespace Relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    static readonly XNamespace Package = "http://schemas.openxmlformats.org/package/2006/relationships";

    public static List<(string Part, string Sheet)> SheetNames(Dictionary<string, string> parts)
    {
        var targets = XDocument
            .Parse(parts["xl/_rels/workbook.xml.rels"])
            .Descendants(Package + "Relationship")
            .ToDictionary(r => r.Attribute("Id")!.Value, r => r.Attribute("Target")!.Value, StringComparer.Ordinal);
        return
        [
            .. XDocument
                .Parse(parts["xl/workbook.xml"])
                .Descendants(Main + "sheet")
                .Select(s => (PartOf(targets[s.Attribute(Relations + "id")!.Value]), s.Attribute("name")!.Value)),
        ];
    }

    static string PartOf(string target) => target.StartsWith('/') ? target[1..] : "xl/" + target;
}
