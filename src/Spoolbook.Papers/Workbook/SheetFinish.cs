using System.Globalization;
using System.Text;
using System.Xml;
using System.Xml.Linq;

namespace Spoolbook.Papers.Workbook;

/// <summary>
/// Writes the results of formulas into one sheet, and removes what is not valid. Node by node, since the tree of a long sheet takes
/// more memory than all that it is made of.
/// </summary>
static class SheetFinish
{
    static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    public static string Apply(string xml, IReadOnlyDictionary<string, CellValue> caches)
    {
        var finished = new StringBuilder(xml.Length + 32 * caches.Count);
        using var reader = XmlReader.Create(new StringReader(xml));
        using (var writer = XmlWriter.Create(finished, new XmlWriterSettings { OmitXmlDeclaration = true }))
        {
            reader.Read();
            while (!reader.EOF)
            {
                if (reader is { NodeType: XmlNodeType.XmlDeclaration })
                {
                    finished.Append(new XDeclaration(reader["version"], reader["encoding"], reader["standalone"]));
                    reader.Read();
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
                    Copy(reader, writer);
                    reader.Read();
                }
            }
        }

        return finished.ToString();
    }

    static bool IsElement(XmlReader reader, string name) =>
        reader.NodeType == XmlNodeType.Element && reader.LocalName == name && reader.NamespaceURI == Main.NamespaceName;

    // One node without what is inside it.
    static void Copy(XmlReader reader, XmlWriter writer)
    {
        switch (reader.NodeType)
        {
            case XmlNodeType.Element:
                var isEmpty = reader.IsEmptyElement;
                writer.WriteStartElement(reader.Prefix, reader.LocalName, reader.NamespaceURI);
                writer.WriteAttributes(reader, defattr: false);
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
