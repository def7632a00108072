using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Xml;

namespace Spoolbook.Entry.Tables;

/// <summary>
/// The sheets of a workbook (ISO/IEC 29500, SpreadsheetML) as saved: what is typed, the last value of each formula,
/// which cells are merged and which rows hidden. Computes nothing and ignores macros.
/// </summary>
sealed class XlsxWorkbook : IDisposable
{
    const string RelationId = "id";

    readonly string _name;
    readonly XlsxPackage _package;
    readonly List<string> _shared = [];
    readonly List<bool> _isDate = [];
    bool _from1904;

    XlsxWorkbook(string name, XlsxPackage package)
    {
        _name = name;
        _package = package;
    }

    /// <summary>The sheets' names in order, with the part that holds each.</summary>
    public ImmutableArray<(string Name, string Part)> Sheets { get; private set; } = [];

    /// <exception cref="TableFault">The file is not a workbook, or is damaged.</exception>
    public static XlsxWorkbook Open(string name, byte[] bytes)
    {
        var package = new XlsxPackage(name, bytes);
        var book = new XlsxWorkbook(name, package);
        book.ReadBook();
        return book;
    }

    public void Dispose() => _package.Dispose();

    /// <exception cref="TableFault">The sheet is damaged, or far too large.</exception>
    public Table Read(string sheet, string part)
    {
        var rows = ImmutableArray.CreateBuilder<Row>();
        var merged = ImmutableArray.CreateBuilder<MergedCells>();
        _package.Read(part, xml =>
        {
            while (xml.Read())
            {
                if (xml.NodeType != XmlNodeType.Element)
                {
                    continue;
                }

                if (xml.LocalName == "row")
                {
                    ReadRow(xml, sheet, rows);
                }
                else if (xml.LocalName == "mergeCell" && xml.GetAttribute("ref") is { } range && Merged(range) is { } cells)
                {
                    merged.Add(cells);
                }
            }
        });
        return new Table(sheet, rows.ToImmutable()) { Merged = merged.ToImmutable() };
    }

    void ReadBook()
    {
        if (_package.IsOpenDocument)
        {
            throw new TableFault(_name, "The workbook is an OpenDocument file.", "Save it as .xlsx, or the sheet as .csv.");
        }

        var targets = new Dictionary<string, string>(StringComparer.Ordinal);
        var start = "xl/workbook.xml";
        EachElement("_rels/.rels", (xml, _) =>
        {
            if (
                xml.GetAttribute("Type")?.EndsWith("/officeDocument", StringComparison.Ordinal) == true
                && xml.GetAttribute("Target") is { } target
            )
            {
                start = target.TrimStart('/');
            }
        });
        if (!_package.Has(start))
        {
            throw new TableFault(
                _name,
                start.EndsWith(".bin", StringComparison.Ordinal) || !_package.Has("[Content_Types].xml")
                    ? "The file is no workbook that can be read."
                    : "The workbook has no list of its sheets.",
                "Save it as .xlsx, or the sheet as .csv."
            );
        }

        if (start.EndsWith(".bin", StringComparison.Ordinal))
        {
            throw new TableFault(_name, "The workbook is saved in a binary form.", "Save it as .xlsx, or the sheet as .csv.");
        }

        var folder = start.Contains('/', StringComparison.Ordinal) ? start[..(start.LastIndexOf('/') + 1)] : "";
        EachElement($"{folder}_rels/{start[folder.Length..]}.rels", (xml, name) =>
        {
            if (name == "Relationship" && xml.GetAttribute("Id") is { } id && xml.GetAttribute("Target") is { } target)
            {
                targets[id] = target.StartsWith('/') ? target[1..] : folder + target;
                if (xml.GetAttribute("Type") is { } type)
                {
                    targets.TryAdd(type[(type.LastIndexOf('/') + 1)..], targets[id]);
                }
            }
        });
        var sheets = ImmutableArray.CreateBuilder<(string, string)>();
        EachElement(start, (xml, name) =>
        {
            if (
                name == "sheet"
                && xml.GetAttribute("name") is { } sheet
                && Relation(xml) is { } id
                && targets.TryGetValue(id, out var part)
            )
            {
                sheets.Add((sheet, part));
            }
            else if (name == "workbookPr")
            {
                _from1904 = xml.GetAttribute("date1904") is "1" or "true";
            }
        });
        Sheets = sheets.ToImmutable();
        ReadShared(targets.GetValueOrDefault("sharedStrings", folder + "sharedStrings.xml"));
        ReadStyles(targets.GetValueOrDefault("styles", folder + "styles.xml"));
    }

    static string? Relation(XmlReader xml)
    {
        string? found = null;
        for (var more = xml.MoveToFirstAttribute(); more; more = xml.MoveToNextAttribute())
        {
            if (xml.LocalName == RelationId && xml.NamespaceURI.Contains("relationships", StringComparison.OrdinalIgnoreCase))
            {
                found = xml.Value;
            }
        }

        xml.MoveToElement();
        return found;
    }

    void EachElement(string part, Action<XmlReader, string> visit) => _package.Read(part, xml =>
        {
            while (xml.Read())
            {
                if (xml.NodeType == XmlNodeType.Element)
                {
                    visit(xml, xml.LocalName);
                }
            }
        });

    void ReadShared(string part) => EachElement(part, (xml, name) =>
        {
            if (name == "si")
            {
                _shared.Add(Words(xml));
            }
        });

    // Leaves out the pronunciation in another script (rPh).
    static string Words(XmlReader xml)
    {
        var words = new StringBuilder();
        if (xml.IsEmptyElement)
        {
            return "";
        }

        var depth = xml.Depth;
        var aside = -1;
        while (xml.Read() && !(xml.NodeType == XmlNodeType.EndElement && xml.Depth == depth))
        {
            if (aside >= 0)
            {
                aside = xml.NodeType == XmlNodeType.EndElement && xml.Depth == aside ? -1 : aside;
            }
            else if (xml.NodeType == XmlNodeType.Element && xml.LocalName == "rPh" && !xml.IsEmptyElement)
            {
                aside = xml.Depth;
            }
            else if (
                xml.NodeType is XmlNodeType.Text or XmlNodeType.SignificantWhitespace or XmlNodeType.Whitespace or XmlNodeType.CDATA
                && IsText(xml)
            )
            {
                words.Append(xml.Value);
            }
        }

        return Unescaped(words.ToString());

        static bool IsText(XmlReader xml) => xml.NodeType is XmlNodeType.Text or XmlNodeType.CDATA || xml.XmlSpace == XmlSpace.Preserve;
    }

    // _x000D_ stands in for a character that XML cannot hold.
    static string Unescaped(string words)
    {
        var whole = new StringBuilder(words.Length);
        var done = 0;
        for (var at = Next(0); at >= 0; at = Next(Math.Max(done, at + 1)))
        {
            if (
                at + 7 <= words.Length
                && words[at + 6] == '_'
                && int.TryParse(words.AsSpan(at + 2, 4), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var code)
            )
            {
                whole.Append(words, done, at - done).Append((char)code);
                done = at + 7;
            }
        }

        return done == 0 ? words : whole.Append(words, done, words.Length - done).ToString();

        int Next(int from) => words.IndexOf("_x", from, StringComparison.Ordinal);
    }

    void ReadStyles(string part)
    {
        var dates = new Dictionary<int, bool>();
        var inCells = false;
        EachElement(part, (xml, name) =>
        {
            switch (name)
            {
                case "numFmt" when Whole(xml.GetAttribute("numFmtId")) is { } id:
                    dates[id] = DateFormat.Is(xml.GetAttribute("formatCode") ?? "");
                    break;
                case "cellXfs" or "cellStyleXfs" or "cellStyles" or "dxfs":
                    inCells = name == "cellXfs";
                    break;
                case "xf" when inCells:
                    var format = Whole(xml.GetAttribute("numFmtId")) ?? 0;
                    _isDate.Add(dates.GetValueOrDefault(format, DateFormat.IsBuiltIn(format)));
                    break;
            }
        });
    }

    void ReadRow(XmlReader xml, string sheet, ImmutableArray<Row>.Builder rows)
    {
        var number = Whole(xml.GetAttribute("r")) ?? (rows.Count == 0 ? 1 : rows[^1].Number + 1);
        var hidden = xml.GetAttribute("hidden") is "1" or "true";
        var cells = ImmutableArray.CreateBuilder<Cell>();
        if (!xml.IsEmptyElement)
        {
            var depth = xml.Depth;
            var next = 0;
            var taken = new HashSet<int>();
            while (xml.Read() && !(xml.NodeType == XmlNodeType.EndElement && xml.Depth == depth))
            {
                if (xml.NodeType == XmlNodeType.Element && xml.LocalName == "c")
                {
                    var column = ColumnOf(xml.GetAttribute("r")) ?? next;
                    next = column + 1;
                    if (ReadCell(xml, sheet, number, column) is { } cell && column < Limits.MostColumns)
                    {
                        // There is no way to know which of the two counts.
                        if (!taken.Add(column))
                        {
                            throw new TableFault(
                                cell.Address,
                                "The file has this cell twice.",
                                "Open it in a spreadsheet program, save it again and import that."
                            );
                        }

                        cells.Add(cell);
                    }
                }
            }
        }

        if (cells.Count > 0)
        {
            Limits.CheckRows(sheet, rows.Count);
            rows.Add(
                new Row(number, string.Create(CultureInfo.InvariantCulture, $"{sheet}!{number}"), cells.ToImmutable()) { IsHidden = hidden }
            );
        }
    }

    Cell? ReadCell(XmlReader xml, string sheet, int row, int column)
    {
        var type = xml.GetAttribute("t") ?? "n";
        var style = Whole(xml.GetAttribute("s")) ?? 0;
        string? value = null;
        var formula = false;
        if (!xml.IsEmptyElement)
        {
            var depth = xml.Depth;
            while (xml.Read() && !(xml.NodeType == XmlNodeType.EndElement && xml.Depth == depth))
            {
                if (xml.NodeType == XmlNodeType.Element)
                {
                    formula |= xml.LocalName == "f";
                    value = xml.LocalName switch
                    {
                        "v" => Content(xml),
                        "is" => Words(xml),
                        _ => value,
                    };
                }
            }
        }

        var address = string.Create(CultureInfo.InvariantCulture, $"{sheet}!{Cell.Letters(column)}{row}");
        if (value is null)
        {
            // A formula without a saved value is flagged only where its value is needed.
            return formula ? new Cell(column, address, CellKind.Fault, "a formula not worked out") { IsFormula = true } : null;
        }

        var cell = Valued(type, style, value, column, address);
        return cell is null ? null : cell with { IsFormula = formula };
    }

    Cell? Valued(string type, int style, string value, int column, string address)
    {
        switch (type)
        {
            case "s":
                return Whole(value) is { } index && index >= 0 && index < _shared.Count ? Worded(_shared[index]) : Worded("");
            case "inlineStr" or "str":
                return Worded(type == "str" ? Unescaped(value) : value);
            case "b":
                return new Cell(column, address, CellKind.Truth, value is "1" or "true" ? "TRUE" : "FALSE");
            case "e":
                return new Cell(column, address, CellKind.Fault, value);
            case "d":
                return new Cell(
                    column,
                    address,
                    CellKind.Date,
                    value.Length > 10 && value[10..] is "T00:00:00" or "T00:00:00Z" ? value[..10] : value
                );
        }

        if (!double.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) || !double.IsFinite(number))
        {
            return Worded(value);
        }

        return style >= 0 && style < _isDate.Count && _isDate[style] && DateOf(number) is { } date
            ? new Cell(column, address, CellKind.Date, date)
            : new Cell(column, address, CellKind.Number, number.ToString("R", CultureInfo.InvariantCulture)) { Number = number };

        Cell? Worded(string words) => string.IsNullOrWhiteSpace(words) ? null : new Cell(column, address, CellKind.Words, words);
    }

    string? DateOf(double serial)
    {
        var days = serial + (_from1904 ? 1462 : 0);
        if (days is < 1 or > 2958465)
        {
            return null;
        }

        var moment = DateTime.FromOADate(days);
        return moment.ToString(moment.TimeOfDay == TimeSpan.Zero ? "yyyy-MM-dd" : "yyyy-MM-dd HH:mm:ss", CultureInfo.InvariantCulture);
    }

    static string Content(XmlReader xml)
    {
        if (xml.IsEmptyElement)
        {
            return "";
        }

        var depth = xml.Depth;
        var content = new StringBuilder();
        while (xml.Read() && !(xml.NodeType == XmlNodeType.EndElement && xml.Depth == depth))
        {
            content.Append(xml.NodeType is XmlNodeType.Text or XmlNodeType.CDATA or XmlNodeType.SignificantWhitespace ? xml.Value : "");
        }

        return content.ToString();
    }

    static MergedCells? Merged(string range)
    {
        var ends = range.Split(':').Select(RowOf).ToList();
        return ends is [{ } first, { } last] ? new MergedCells(range, first, last) : null;
    }

    static int? RowOf(string reference) => Whole(reference.TrimStart([.. "ABCDEFGHIJKLMNOPQRSTUVWXYZ$"]));

    static int? ColumnOf(string? reference)
    {
        var column = 0;
        foreach (var letter in reference ?? "")
        {
            if (!char.IsAsciiLetterUpper(letter))
            {
                break;
            }

            column = Math.Min((column * 26) + (letter - 'A' + 1), 1_000_000);
        }

        return column > 0 ? column - 1 : null;
    }

    static int? Whole(string? text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var whole) ? whole : null;
}
