using System.Globalization;
using System.IO.Compression;
using System.Xml.Linq;

namespace Spoolbook.Entry.Tests;

/// <summary>The workbook, for typing into its sheet of takes.</summary>
/// <param name="called">The workbook's name of an English head.</param>
sealed class TakesBook(byte[] workbook, Func<string, string>? called = null)
{
    static readonly XNamespace _main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    readonly Dictionary<string, byte[]> _parts = Unzipped(workbook);

    /// <summary>The bytes of the saved workbook.</summary>
    public byte[] Saved()
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, part) in _parts)
            {
                using var stream = zip.CreateEntry(name, CompressionLevel.Fastest).Open();
                stream.Write(part);
            }
        }

        return bytes.ToArray();
    }

    /// <summary>Types words or a number into the cell of a take, given by its roll and slate.</summary>
    public TakesBook Type(string take, string head, object? typed) =>
        Change(sheet =>
        {
            var cell = CellOf(sheet, RowOf(sheet, take), ColumnOf(sheet, head));
            Put(cell, typed);
        });

    /// <summary>Types a take into the row under the last, by heads.</summary>
    public TakesBook Append(params (string Head, object Typed)[] cells) => Insert(null, cells);

    /// <summary>Inserts a row below that of a take, or below the last.</summary>
    public TakesBook Insert(string? after, params (string Head, object Typed)[] cells) =>
        Change(sheet =>
        {
            var data = sheet.Descendants(_main + "sheetData").Single();
            var above = after is null ? data.Elements().Last() : RowOf(sheet, after);
            var number = int.Parse(above.Attribute("r")!.Value, CultureInfo.InvariantCulture);
            foreach (var below in above.ElementsAfterSelf().ToList())
            {
                Renumber(below, int.Parse(below.Attribute("r")!.Value, CultureInfo.InvariantCulture) + 1);
            }

            var row = new XElement(_main + "row", new XAttribute("r", number + 1));
            foreach (
                var (head, typed) in cells
                    .OrderBy(c => ColumnOf(sheet, c.Head).Length)
                    .ThenBy(c => ColumnOf(sheet, c.Head), StringComparer.Ordinal)
            )
            {
                var cell = new XElement(
                    _main + "c",
                    new XAttribute("r", FormattableString.Invariant($"{ColumnOf(sheet, head)}{number + 1}"))
                );
                Put(cell, typed);
                row.Add(cell);
            }

            above.AddAfterSelf(row);
        });

    /// <summary>Deletes the row of a take.</summary>
    public TakesBook Remove(string take) => Change(sheet => RowOf(sheet, take).Remove());

    /// <summary>A part of the workbook as text.</summary>
    public string Text(string part) => System.Text.Encoding.UTF8.GetString(_parts[part]);

    /// <summary>Changes the sheet's own XML.</summary>
    public TakesBook Change(Action<XElement> change)
    {
        var part = TakesPart();
        using var stream = new MemoryStream(_parts[part]);
        var sheet = XDocument.Load(stream, LoadOptions.PreserveWhitespace);
        change(sheet.Root!);
        using var saved = new MemoryStream();
        sheet.Save(saved, SaveOptions.DisableFormatting);
        _parts[part] = saved.ToArray();
        return this;
    }

    public TakesBook With(string part, byte[] bytes)
    {
        _parts[part] = bytes;
        return this;
    }

    /// <summary>The address of a take's cell, as in an objection.</summary>
    public string Address(string take, string head)
    {
        var address = "";
        Change(sheet => address = $"Takes!{ColumnOf(sheet, head)}{RowOf(sheet, take).Attribute("r")!.Value}");
        return address;
    }

    public string TakesPart() => "xl/worksheets/sheet5.xml";

    static void Put(XElement cell, object? typed)
    {
        cell.RemoveNodes();
        cell.SetAttributeValue("t", null);
        switch (typed)
        {
            case string words:
                cell.SetAttributeValue("t", "inlineStr");
                cell.Add(
                    new XElement(_main + "is", new XElement(_main + "t", new XAttribute(XNamespace.Xml + "space", "preserve"), words))
                );
                break;
            case IFormattable number:
                cell.Add(new XElement(_main + "v", number.ToString(null, CultureInfo.InvariantCulture)));
                break;
        }
    }

    static void Renumber(XElement row, int number)
    {
        row.SetAttributeValue("r", number);
        foreach (var cell in row.Elements(_main + "c"))
        {
            cell.SetAttributeValue(
                "r",
                new string([.. cell.Attribute("r")!.Value.TakeWhile(char.IsAsciiLetter)]) + number.ToString(CultureInfo.InvariantCulture)
            );
        }
    }

    XElement RowOf(XElement sheet, string take)
    {
        var parts = take.Split(' ', '/');
        return sheet
            .Descendants(_main + "row")
            .Single(r =>
                TextOf(sheet, r, "Roll") == parts[0]
                && TextOf(sheet, r, "Scene") + TextOf(sheet, r, "Shot") == parts[1]
                && TextOf(sheet, r, "Take") == parts[2]
            );
    }

    string ColumnOf(XElement sheet, string head)
    {
        var row = sheet.Descendants(_main + "row").Single(r => r.Attribute("r")!.Value == "4");
        var cell = row.Elements().Single(c => Text(c) == (called?.Invoke(head) ?? head));
        return cell.Attribute("r")!.Value.TrimEnd('4');
    }

    string TextOf(XElement sheet, XElement row, string head)
    {
        var column = ColumnOf(sheet, head);
        var cell = row.Elements().FirstOrDefault(c => c.Attribute("r")!.Value == column + row.Attribute("r")!.Value);
        return cell is null ? "" : Text(cell);
    }

    static XElement CellOf(XElement sheet, XElement row, string column)
    {
        var address = column + row.Attribute("r")!.Value;
        var cell = row.Elements().FirstOrDefault(c => c.Attribute("r")!.Value == address);
        if (cell is null)
        {
            cell = new XElement(_main + "c", new XAttribute("r", address));
            var before = row.Elements()
                .LastOrDefault(c =>
                    c.Attribute("r")!.Value.Length < address.Length || string.CompareOrdinal(c.Attribute("r")!.Value, address) < 0
                );
            if (before is null)
            {
                row.AddFirst(cell);
            }
            else
            {
                before.AddAfterSelf(cell);
            }
        }

        return cell;
    }

    string Text(XElement cell) =>
        cell.Attribute("t")?.Value == "s" && cell.Value.Length > 0
            ? Shared()[int.Parse(cell.Value, CultureInfo.InvariantCulture)]
            : cell.Value;

    List<string> Shared()
    {
        if (_shared is null)
        {
            using var stream = new MemoryStream(_parts["xl/sharedStrings.xml"]);
            _shared = [.. XDocument.Load(stream).Descendants(_main + "si").Select(s => s.Value)];
        }

        return _shared;
    }

    List<string>? _shared;

    static Dictionary<string, byte[]> Unzipped(byte[] workbook)
    {
        using var zip = new ZipArchive(new MemoryStream(workbook));
        return zip.Entries.ToDictionary(
            e => e.FullName,
            e =>
            {
                using var stream = e.Open();
                using var bytes = new MemoryStream();
                stream.CopyTo(bytes);
                return bytes.ToArray();
            }
        );
    }
}
