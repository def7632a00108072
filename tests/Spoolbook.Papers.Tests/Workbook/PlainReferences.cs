using System.Globalization;
using System.IO.Compression;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Spoolbook.Papers.Tests.Workbook;

/// <summary>
/// Spells a workbook out for a spreadsheet program without tables: each reference to a column of a table becomes its
/// range, from the table's own part in the file. The results of formulas are removed. Gnumeric 1.12 compares column by
/// column only in array formulas, has no 109 for SUBTOTAL (no row is hidden here), and finds no INDEX in a column of
/// one cell.
/// </summary>
static partial class PlainReferences
{
    static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    public static byte[] Of(byte[] workbook)
    {
        var book = new XlsxReader(workbook);
        var columns = new Dictionary<(string Table, string Head), (string Sheet, string Letters, int First, int Last)>();
        foreach (var (name, sheet) in book.Sheets.SelectMany(s => s.Value.EachTable.Select(t => (s.Key, t))))
        {
            var rows = sheet.Rows().ToList();
            foreach (var (head, address) in rows[0])
            {
                columns[(sheet.TableName, head)] = (name, LettersOf(address), RowOf(address), RowOf(rows[^1][head]));
            }
        }

        using var bytes = new MemoryStream();
        bytes.Write(workbook);
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Update, leaveOpen: true))
        {
            foreach (var entry in zip.Entries.Where(e => e.FullName.StartsWith("xl/worksheets/sheet", StringComparison.Ordinal)).ToList())
            {
                Rewrite(entry, columns);
            }
        }

        return bytes.ToArray();
    }

    static void Rewrite(
        ZipArchiveEntry entry,
        Dictionary<(string Table, string Head), (string Sheet, string Letters, int First, int Last)> columns
    )
    {
        using var stream = entry.Open();
        var xml = XDocument.Load(stream);
        foreach (var formula in xml.Descendants(Main + "f"))
        {
            var row = RowOf(formula.Parent!.Attribute("r")!.Value);
            formula.Parent.Elements(Main + "v").Remove();
            formula.Parent.SetAttributeValue("t", null);
            var own = ThisRow()
                .Replace(formula.Value, m => columns[(m.Groups[1].Value, m.Groups[2].Value)] is var c ? $"${c.Letters}{row}" : "");
            var single = OneRow()
                .Replace(own, m =>
                    columns[(m.Groups[1].Value, m.Groups[2].Value)] is var c && c.First == c.Last ? "CHOOSE(1," + m.Value[6..] : m.Value
                );
            formula.Value = Column()
                .Replace(single.Replace("SUBTOTAL(109,", "SUBTOTAL(9,", StringComparison.Ordinal), m =>
                    columns[(m.Groups[1].Value, m.Groups[2].Value)] is var c
                        ? $"'{c.Sheet}'!${c.Letters}${c.First}:${c.Letters}${c.Last}"
                        : ""
                );
        }

        foreach (var formula in xml.Descendants(Main + "f").Where(f => f.Value.Contains("SUMPRODUCT", StringComparison.Ordinal)))
        {
            formula.SetAttributeValue("t", "array");
            formula.SetAttributeValue("ref", formula.Parent!.Attribute("r")!.Value);
        }

        // Gnumeric stumbles over a prefix for the main namespace where another begins with the same letter.
        xml.Root!.Attributes().Where(a => a.IsNamespaceDeclaration && a.Value == Main.NamespaceName).Remove();
        stream.SetLength(0);
        xml.Save(stream);
    }

    static int RowOf(string address) => int.Parse(address.TrimStart([.. "ABCDEFGHIJKLMNOPQRSTUVWXYZ"]), CultureInfo.InvariantCulture);

    static string LettersOf(string address) => address.TrimEnd([.. "0123456789"]);

    [GeneratedRegex(@"([A-Za-z]+)\[\[#This Row\],\[([^\]]+)\]\]")]
    private static partial Regex ThisRow();

    [GeneratedRegex(@"INDEX\(([A-Za-z]+)\[([^\[\]]+)\]")]
    private static partial Regex OneRow();

    [GeneratedRegex(@"([A-Za-z]+)\[([^\[\]]+)\]")]
    private static partial Regex Column();
}
