using System.Globalization;
using System.Xml.Linq;

namespace Spoolbook.Papers.Workbook;

/// <summary>
/// Puts charts into a package, since ClosedXML 0.95.4 makes none: a drawing of the first sheet, a part for each chart, and
/// what connects them.
/// </summary>
static class ChartParts
{
    const string Drawing = "xl/drawings/drawing1.xml";

    static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    static readonly XNamespace Relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    static readonly XNamespace Package = "http://schemas.openxmlformats.org/package/2006/relationships";
    static readonly XNamespace Types = "http://schemas.openxmlformats.org/package/2006/content-types";
    static readonly XNamespace Place = "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing";
    static readonly XNamespace Draw = "http://schemas.openxmlformats.org/drawingml/2006/main";
    static readonly XNamespace Chart = "http://schemas.openxmlformats.org/drawingml/2006/chart";

    // What may come behind a drawing in a sheet.
    static readonly HashSet<string> Behind =
    [
        "legacyDrawing",
        "legacyDrawingHF",
        "picture",
        "oleObjects",
        "controls",
        "webPublishItems",
        "tableParts",
        "extLst",
    ];

    /// <param name="sheet">The part of the first sheet.</param>
    public static void Add(Dictionary<string, string> parts, string sheet, IReadOnlyList<BookChart> charts)
    {
        if (charts.Count == 0)
        {
            return;
        }

        var drawing = new XElement(
            Place + "wsDr",
            new XAttribute(XNamespace.Xmlns + "xdr", Place),
            new XAttribute(XNamespace.Xmlns + "a", Draw)
        );
        var drawn = new XElement(Package + "Relationships");
        foreach (var (i, chart) in charts.Index())
        {
            var number = (i + 1).ToString(CultureInfo.InvariantCulture);
            parts[$"xl/charts/chart{number}.xml"] = Text(ChartXml.Of(chart));
            Typed(parts, $"/xl/charts/chart{number}.xml", "application/vnd.openxmlformats-officedocument.drawingml.chart+xml");
            drawn.Add(Relation("chart" + number, "chart", $"/xl/charts/chart{number}.xml"));
            drawing.Add(Anchor(chart, i, "chart" + number));
        }

        parts[Drawing] = Text(drawing);
        parts["xl/drawings/_rels/drawing1.xml.rels"] = Text(drawn);
        Typed(parts, "/" + Drawing, "application/vnd.openxmlformats-officedocument.drawing+xml");

        var rels = sheet.Replace("worksheets/", "worksheets/_rels/", StringComparison.Ordinal) + ".rels";
        var known = parts.TryGetValue(rels, out var old) ? XDocument.Parse(old).Root! : new XElement(Package + "Relationships");
        known.Add(Relation("drawing1", "drawing", "/" + Drawing));
        parts[rels] = Text(known);

        var xml = XDocument.Parse(parts[sheet], LoadOptions.PreserveWhitespace);
        var reference = new XElement(Main + "drawing", new XAttribute(Relations + "id", "drawing1"));
        if (xml.Root!.Elements().FirstOrDefault(e => Behind.Contains(e.Name.LocalName)) is { } next)
        {
            next.AddBeforeSelf(reference);
        }
        else
        {
            xml.Root!.Add(reference);
        }

        parts[sheet] = xml.Declaration + xml.ToString(SaveOptions.DisableFormatting);
    }

    static XElement Relation(string id, string type, string target) =>
        new(
            Package + "Relationship",
            new XAttribute("Id", id),
            new XAttribute("Type", Relations.NamespaceName + "/" + type),
            new XAttribute("Target", target)
        );

    static void Typed(Dictionary<string, string> parts, string part, string type)
    {
        var types = XDocument.Parse(parts["[Content_Types].xml"]);
        types.Root!.Add(new XElement(Types + "Override", new XAttribute("PartName", part), new XAttribute("ContentType", type)));
        parts["[Content_Types].xml"] = Text(types.Root!);
    }

    static XElement Anchor(BookChart chart, int index, string id)
    {
        static XElement Corner(string name, int column, int row) =>
            new(
                Place + name,
                new XElement(Place + "col", column),
                new XElement(Place + "colOff", 0),
                new XElement(Place + "row", row),
                new XElement(Place + "rowOff", 0)
            );
        return new(
            Place + "twoCellAnchor",
            Corner("from", 0, chart.Place.From),
            Corner("to", chart.Place.Columns, chart.Place.To),
            new XElement(
                Place + "graphicFrame",
                new XAttribute("macro", ""),
                new XElement(
                    Place + "nvGraphicFramePr",
                    new XElement(
                        Place + "cNvPr",
                        new XAttribute("id", index + 2),
                        new XAttribute("name", chart.Name),
                        new XAttribute("descr", chart.Name)
                    ),
                    new XElement(Place + "cNvGraphicFramePr")
                ),
                new XElement(
                    Place + "xfrm",
                    new XElement(Draw + "off", new XAttribute("x", 0), new XAttribute("y", 0)),
                    new XElement(Draw + "ext", new XAttribute("cx", 0), new XAttribute("cy", 0))
                ),
                new XElement(
                    Draw + "graphic",
                    new XElement(
                        Draw + "graphicData",
                        new XAttribute("uri", Chart.NamespaceName),
                        new XElement(
                            Chart + "chart",
                            new XAttribute(XNamespace.Xmlns + "c", Chart),
                            new XAttribute(XNamespace.Xmlns + "r", Relations),
                            new XAttribute(Relations + "id", id)
                        )
                    )
                )
            ),
            new XElement(Place + "clientData")
        );
    }

    static string Text(XElement root) => "<?xml version=\"1.0\" encoding=\"utf-8\"?>" + root.ToString(SaveOptions.DisableFormatting);
}
