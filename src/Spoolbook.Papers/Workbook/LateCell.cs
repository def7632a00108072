using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Spoolbook.Papers.Workbook;

/// <summary>A cell that the library does not write.</summary>
readonly partial record struct LateCell(int Column, LateKind Kind, CellValue Value)
{
    static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    public static LateKind KindOf(CellValue value) =>
        value.Formula is not null
            ? value.Number is null
                ? LateKind.WordsByFormula
                : LateKind.NumberByFormula
            : value.Text is { } text
                ? SheetWriter.NeedsQuote(text)
                    ? LateKind.QuotedWords
                    : LateKind.Words
                : value.Moment is not null
                    ? LateKind.Moment
                    : LateKind.Number;

    /// <summary>The cell as the file has it.</summary>
    /// <param name="look">Its look, as the file numbers it.</param>
    public XElement Write(int row, string? look)
    {
        var cell = new XElement(Main + "c", new XAttribute("r", LateCells.Address(Column, row)));
        cell.SetAttributeValue("s", look);
        switch (Kind)
        {
            case LateKind.Words or LateKind.QuotedWords:
                cell.SetAttributeValue("t", "inlineStr");
                var text = LiteralEscape().Replace(Value.Text!, "_x005F_");
                cell.Add(new XElement(Main + "is", new XElement(Main + "t", new XAttribute(XNamespace.Xml + "space", "preserve"), text)));
                break;
            case LateKind.WordsByFormula:
                cell.SetAttributeValue("t", "str");
                cell.Add(new XElement(Main + "f", Value.Formula), new XElement(Main + "v", Value.Text));
                break;
            case LateKind.NumberByFormula:
                cell.Add(new XElement(Main + "f", Value.Formula), new XElement(Main + "v", Spelt(Value.Number!.Value)));
                break;
            default:
                cell.Add(new XElement(Main + "v", Spelt(Value.Number ?? Value.Moment!.Value.ToOADate())));
                break;
        }

        return cell;
    }

    static string Spelt(double number) => number.ToString("R", CultureInfo.InvariantCulture);

    // A reader takes _x0041_ for an A.
    [GeneratedRegex("_(?=x[0-9A-Fa-f]{4}_)")]
    private static partial Regex LiteralEscape();
}
