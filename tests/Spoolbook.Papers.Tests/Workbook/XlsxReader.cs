using System.Globalization;
using System.IO.Compression;
using System.Xml.Linq;

namespace Spoolbook.Papers.Tests.Workbook;

/// <summary>Reads a workbook as zip and XML, without a spreadsheet library.</summary>
sealed class XlsxReader
{
    static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    static readonly XNamespace Relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    readonly Dictionary<string, XDocument> _parts;

    public XlsxReader(byte[] file)
    {
        using var zip = new ZipArchive(new MemoryStream(file));
        _parts = zip
            .Entries.Where(e => e.Name.EndsWith(".xml", StringComparison.Ordinal) || e.Name.EndsWith(".rels", StringComparison.Ordinal))
            .ToDictionary(e => e.FullName, e => XDocument.Load(e.Open()));
        var shared = _parts.TryGetValue("xl/sharedStrings.xml", out var strings)
            ? strings.Root!.Elements(Main + "si").Select(Words).ToList()
            : [];
        Names = _parts["xl/workbook.xml"]
            .Descendants(Main + "definedName")
            .Where(n => n.Attribute("localSheetId") is null)
            .ToDictionary(n => n.Attribute("name")!.Value, n => n.Value);
        Sheets = _parts["xl/workbook.xml"]
            .Descendants(Main + "sheet")
            .ToDictionary(s => s.Attribute("name")!.Value, s => new XlsxSheet(SheetOf(s, out var path), TablesOf(path), shared));
    }

    public Dictionary<string, XlsxSheet> Sheets { get; }

    /// <summary>Each table by its name, with the sheet that it is on.</summary>
    public Dictionary<string, XlsxSheet> Tables => Sheets.Values.SelectMany(s => s.EachTable).ToDictionary(t => t.TableName);

    /// <summary>The charts: for each the ranges that it shows.</summary>
    public IEnumerable<List<string>> Charts =>
        _parts
            .Where(p => p.Key.StartsWith("xl/charts/chart", StringComparison.Ordinal))
            .OrderBy(p => p.Key, StringComparer.Ordinal)
            .Select(p => p.Value.Descendants().Where(e => e.Name.LocalName == "f").Select(e => e.Value).ToList());

    /// <summary>What repeats on every printed page, by the sheet's place from 0.</summary>
    public Dictionary<int, string> PrintTitles =>
        _parts["xl/workbook.xml"]
            .Descendants(Main + "definedName")
            .Where(n => n.Attribute("name")!.Value == "_xlnm.Print_Titles")
            .ToDictionary(n => int.Parse(n.Attribute("localSheetId")!.Value, CultureInfo.InvariantCulture), n => n.Value);

    /// <summary>What is printed, by the sheet's place from 0.</summary>
    public Dictionary<int, string> PrintAreas =>
        _parts["xl/workbook.xml"]
            .Descendants(Main + "definedName")
            .Where(n => n.Attribute("name")!.Value == "_xlnm.Print_Area")
            .ToDictionary(n => int.Parse(n.Attribute("localSheetId")!.Value, CultureInfo.InvariantCulture), n => n.Value.Split('!')[1]);

    /// <summary>The code of a cell's number format.</summary>
    public string NumberFormat(XlsxSheet sheet, string address)
    {
        var styles = _parts["xl/styles.xml"];
        var style = int.Parse(
            sheet.Xml.Descendants(Main + "c").Single(c => c.Attribute("r")!.Value == address).Attribute("s")!.Value,
            CultureInfo.InvariantCulture
        );
        var id = styles.Descendants(Main + "cellXfs").Single().Elements(Main + "xf").ElementAt(style).Attribute("numFmtId")!.Value;
        return styles
            .Descendants(Main + "numFmts")
            .Elements()
            .SingleOrDefault(f => f.Attribute("numFmtId")!.Value == id)
            ?.Attribute("formatCode")!
            .Value
            ?? BuiltIn[id];
    }

    // ECMA-376, 18.8.30: the codes that a file may leave out.
    static readonly Dictionary<string, string> BuiltIn = new()
    {
        ["0"] = "General",
        ["1"] = "0",
        ["2"] = "0.00",
        ["3"] = "#,##0",
        ["4"] = "#,##0.00",
        ["49"] = "@",
    };

    public Dictionary<string, string> Names { get; }

    public static string Words(XElement item) => string.Concat(item.Descendants(Main + "t").Select(t => t.Value));

    XDocument SheetOf(XElement sheet, out string path)
    {
        path = Target("xl/_rels/workbook.xml.rels", sheet.Attribute(Relations + "id")!.Value, "xl/");
        return _parts[path];
    }

    string Target(string rels, string id, string from)
    {
        var target = _parts[rels].Root!.Elements().Single(r => r.Attribute("Id")!.Value == id).Attribute("Target")!.Value;
        return target.StartsWith('/') ? target[1..]
            : target.Replace("../", "xl/", StringComparison.Ordinal) is var up && up.StartsWith("xl/", StringComparison.Ordinal) ? up
            : from + target;
    }

    List<XElement> TablesOf(string sheet)
    {
        var rels = sheet.Replace("worksheets/", "worksheets/_rels/", StringComparison.Ordinal) + ".rels";
        return
        [
            .. _parts[sheet]
                .Descendants(Main + "tablePart")
                .Select(t => _parts[Target(rels, t.Attribute(Relations + "id")!.Value, "xl/worksheets/")].Root!),
        ];
    }
}

/// <summary>A cell: what it shows, and its formula if it has one.</summary>
sealed record XlsxCell(string Value, string Type, string? Formula)
{
    public double Number => double.Parse(Value, CultureInfo.InvariantCulture);
}

/// <summary>One sheet of a workbook.</summary>
sealed class XlsxSheet
{
    static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    public XlsxSheet(XDocument xml, List<XElement> tables, List<string> shared)
    {
        Xml = xml;
        Tables = tables;
        Cells = xml.Descendants(Main + "c").ToDictionary(c => c.Attribute("r")!.Value, c => CellOf(c, shared));
    }

    XlsxSheet(XlsxSheet sheet, XElement table) => (Xml, Tables, Cells) = (sheet.Xml, [table], sheet.Cells);

    public XDocument Xml { get; }

    public Dictionary<string, XlsxCell> Cells { get; }

    public List<XElement> Tables { get; }

    /// <summary>The sheet once for each of its tables, as if it had no other.</summary>
    public IEnumerable<XlsxSheet> EachTable => Tables.Select(t => new XlsxSheet(this, t));

    /// <summary>The row of the table's heads.</summary>
    public int HeadRow => RowOf(Tables.Single().Attribute("ref")!.Value.Split(':')[0]);

    public string TableName => Tables.Single().Attribute("name")!.Value;

    public string Value(string address) => Cells.TryGetValue(address, out var cell) ? cell.Value : "";

    /// <summary>The rows of the sheet's table: by head, the address of the cell.</summary>
    public IEnumerable<IReadOnlyDictionary<string, string>> Rows()
    {
        var table = Tables.Single();
        var heads = table.Descendants(Main + "tableColumn").Select(c => c.Attribute("name")!.Value).ToList();
        var corners = table.Attribute("ref")!.Value.Split(':');
        for (var row = RowOf(corners[0]) + 1; row <= RowOf(corners[1]); row++)
        {
            yield return heads
                .Select((head, i) => (head, Address: Column(i) + row.ToString(CultureInfo.InvariantCulture)))
                .ToDictionary(h => h.head, h => h.Address);
        }
    }

    static int RowOf(string address) => int.Parse(address.TrimStart([.. "ABCDEFGHIJKLMNOPQRSTUVWXYZ"]), CultureInfo.InvariantCulture);

    // Our tables are no wider than 52 columns.
    static string Column(int index) => index < 26 ? ((char)('A' + index)).ToString() : "A" + (char)('A' + index - 26);

    static XlsxCell CellOf(XElement cell, List<string> shared)
    {
        var type = cell.Attribute("t")?.Value ?? "n";
        var written = cell.Element(Main + "v")?.Value ?? "";
        var value = type switch
        {
            "s" when written.Length > 0 => shared[int.Parse(written, CultureInfo.InvariantCulture)],
            "inlineStr" => XlsxReader.Words(cell),
            _ => written,
        };
        return new XlsxCell(value, type, cell.Element(Main + "f")?.Value);
    }
}
