using System.Globalization;
using System.Xml;
using System.Xml.Linq;
using ClosedXML.Excel;

namespace Spoolbook.Papers.Workbook;

/// <summary>
/// Writes the results of formulas into one sheet, and removes what is not valid. Node by node, since the tree of a long sheet takes
/// more memory than all that it is made of.
/// </summary>
static class SheetFinish
{
    static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    /// <param name="late">The cells that the library did not write; null where there are none.</param>
    /// <param name="idOf">The id to write for one of the library's.</param>
    public static void Apply(
        TextReader xml,
        TextWriter finished,
        IReadOnlyDictionary<string, CellValue> caches,
        LateCells? late,
        Func<string, string> idOf
    )
    {
        using var reader = XmlReader.Create(xml);
        using var writer = XmlWriter.Create(finished, new XmlWriterSettings { OmitXmlDeclaration = true });
        var rows = new Queue<int>(late?.Rows ?? []);
        reader.Read();
        while (!reader.EOF)
        {
            if (reader is { NodeType: XmlNodeType.XmlDeclaration })
            {
                finished.Write(new XDeclaration(reader["version"], reader["encoding"], reader["standalone"]));
                reader.Read();
            }
            else if (late is not null && IsElement(reader, "row"))
            {
                Row(int.Parse(reader["r"]!, CultureInfo.InvariantCulture));
            }
            else if (IsElement(reader, "c") && reader["r"] is { } place && caches.TryGetValue(place, out var cached))
            {
                var cell = (XElement)XNode.ReadFrom(reader);
                WriteCache(cell, cached);
                cell.WriteTo(writer);
            }
            else if (IsElement(reader, "extLst"))
            {
                // The extensions repeat the data bars for newer programs, in a form that does not validate.
                reader.Skip();
            }
            else
            {
                if (late is not null && reader is { NodeType: XmlNodeType.EndElement, LocalName: "sheetData" })
                {
                    LateRows(int.MaxValue);
                }

                Copy(reader, writer, late is not null && IsElement(reader, "dimension") ? _ => "A1:" + late.Corner : idOf);
                reader.Read();
            }
        }

        // A row of the library's, with what it did not get, behind those that it has nothing of.
        void Row(int number)
        {
            LateRows(number);
            var row = (XElement)XNode.ReadFrom(reader);
            foreach (var cell in row.Elements(Main + "c"))
            {
                var at = cell.Attribute("r")!.Value;
                late!.Learn(at, cell.Attribute("s")?.Value);
                if (caches.TryGetValue(at, out var cached))
                {
                    WriteCache(cell, cached);
                }
            }

            if (rows.TryPeek(out var next) && next == number)
            {
                rows.Dequeue();
                var cells = row.Elements(Main + "c").ToDictionary(c => XLHelper.GetColumnNumberFromLetter(Letters(c)));
                foreach (var cell in late!.Of(number))
                {
                    cells[cell.Column] = cell.Write(number, late.LookOf(cell));
                }

                row.ReplaceNodes(cells.OrderBy(c => c.Key).Select(c => c.Value).ToList());
            }

            row.WriteTo(writer);
        }

        void LateRows(int before)
        {
            while (rows.TryPeek(out var number) && number < before)
            {
                rows.Dequeue();
                var row = new XElement(Main + "row", new XAttribute("r", number));
                row.Add(late!.Of(number).Select(c => c.Write(number, late.LookOf(c))));
                row.WriteTo(writer);
            }
        }
    }

    static string Letters(XElement cell) => cell.Attribute("r")!.Value.TrimEnd([.. "0123456789"]);

    static bool IsElement(XmlReader reader, string name) =>
        reader.NodeType == XmlNodeType.Element && reader.LocalName == name && reader.NamespaceURI == Main.NamespaceName;

    // One node without what is inside it.
    static void Copy(XmlReader reader, XmlWriter writer, Func<string, string> valueOf)
    {
        switch (reader.NodeType)
        {
            case XmlNodeType.Element:
                var isEmpty = reader.IsEmptyElement;
                writer.WriteStartElement(reader.Prefix, reader.LocalName, reader.NamespaceURI);
                while (reader.MoveToNextAttribute())
                {
                    writer.WriteAttributeString(reader.Prefix, reader.LocalName, reader.NamespaceURI, valueOf(reader.Value));
                }

                reader.MoveToElement();
                if (isEmpty)
                {
                    writer.WriteEndElement();
                }

                break;
            case XmlNodeType.EndElement:
                writer.WriteFullEndElement();
                break;
            case XmlNodeType.Text or XmlNodeType.Whitespace or XmlNodeType.SignificantWhitespace:
                writer.WriteString(reader.Value);
                break;
            default:
                throw new InvalidOperationException($"A sheet has a node of the kind {reader.NodeType}.");
        }
    }

    static void WriteCache(XElement cell, CellValue value)
    {
        cell.Elements(Main + "v").Remove();
        cell.SetAttributeValue("t", value.Number is null ? "str" : null);
        cell.Add(new XElement(Main + "v", value.Number?.ToString("R", CultureInfo.InvariantCulture) ?? value.Text ?? ""));
    }
}
