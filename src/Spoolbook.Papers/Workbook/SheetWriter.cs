using ClosedXML.Excel;
using Spoolbook.Papers.Ledger;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Workbook;

/// <summary>Writes cells, and what all sheets have in common: colours, print set-up, head and foot.</summary>
sealed class SheetWriter(XLWorkbook book, Caches caches, WorkbookUnits units, Production production, WorkbookTerms words)
{
    // The most characters in a cell.
    const int Most = 32767;

    public static readonly XLColor Ink = XLColor.FromHtml("#1F2A37");
    public static readonly XLColor Quiet = XLColor.FromHtml("#6B7280");
    public static readonly XLColor Band = XLColor.FromHtml("#E8EDF2");
    public static readonly XLColor Alarm = XLColor.FromHtml("#FBE3D6");

    public CellFormats Formats { get; } = new(units.InMetres);

    public WorkbookUnits Units => units;

    /// <summary>The tables written so far, by name.</summary>
    public Dictionary<string, WrittenTable> Written { get; } = new(StringComparer.Ordinal);

    /// <summary>The charts of the first sheet.</summary>
    public List<BookChart> Charts { get; } = [];

    public WorkbookNotes Notes { get; } = new();

    public WorkbookTerms Words => words;

    /// <summary>A sheet, by its name in the house's terms.</summary>
    public IXLWorksheet Add(string name)
    {
        var called = words.Sheet(name);
        if (book.Worksheets.Contains(called))
        {
            throw new UnfitWordException(WorkbookTerms.SheetKey(name), Sentence.Of("paper/words.value.sheet-twice", ("called", called)));
        }

        var sheet = book.AddWorksheet(called);
        sheet.Style.Font.FontName = "Calibri";
        sheet.Style.Font.FontSize = 10;
        sheet.ShowGridLines = false;
        PrintSetup(sheet);
        return sheet;
    }

    /// <summary>The heading of a sheet or a table, with a sentence about it below.</summary>
    public void Title(IXLWorksheet sheet, int row, string heading, string sentence)
    {
        Put(sheet.Cell(row, 1), heading, CellFormat.Words);
        sheet.Cell(row, 1).Style.Font.SetBold().Font.SetFontSize(14).Font.SetFontColor(Ink);
        sheet.Row(row).Height = 21;
        Put(sheet.Cell(row + TableRows.Sentence, 1), sentence, CellFormat.Words);
        sheet.Cell(row + TableRows.Sentence, 1).Style.Font.SetItalic().Font.SetFontColor(Quiet);
    }

    /// <summary>Writes a cell outside a table, with its look.</summary>
    public void Put(IXLCell cell, CellValue value, CellFormat format)
    {
        Formats.Apply(cell.Style, format);
        Put(cell, value);
    }

    /// <summary>Writes a cell with its column's look.</summary>
    /// <param name="table">The table that it is in; null outside of one.</param>
    public void Put(IXLCell cell, CellValue value, string? table = null)
    {
        if (value.Formula is { } formula)
        {
            // A cell formatted as text would show the formula itself.
            if (value.Number is null)
            {
                cell.Style.NumberFormat.Format = "General";
            }

            var spelt = words.Formula(formula, table);
            cell.FormulaA1 = spelt;
            cell.FormulaR1C1 = spelt;
            caches.Remember(cell.Worksheet.Name, cell.Address.ToString() ?? "", value);
        }
        else if (value.Text is { } text)
        {
            PutWords(cell, text);
        }
        else if (value.Moment is { } moment)
        {
            cell.SetValue(moment);
        }
        else if (value.Number is { } number)
        {
            cell.SetValue(number);
        }
    }

    /// <summary>Writes a cell of a long table, or holds it back until the sheet is finished.</summary>
    /// <param name="nth">Which row of the table it is in, from 0.</param>
    public void PutInLong(IXLWorksheet sheet, int nth, int row, int column, CellValue value, string table)
    {
        var spelt =
            value.Formula is { } formula ? value.Spelt(words.Formula(formula, table))
            : value.Text is { } text ? value.Saying(SafeText.Of(text, Most))
            : value;
        if (!caches.Late(sheet.Name).HoldBack(nth, row, column, spelt))
        {
            Put(sheet.Cell(row, column), value, table);
        }
    }

    /// <summary>The beginning of a long table's cells, for the library; the file says how long it is.</summary>
    public IXLRange Shorten(IXLRange whole, int last, string table)
    {
        var begin = whole.Worksheet.Range(whole.FirstCell().Address, whole.Worksheet.Cell(last, whole.LastColumn().ColumnNumber()).Address);
        caches.Late(whole.Worksheet.Name).Table = new LongTable(table, Text(begin), Text(whole));
        return begin;

        static string Text(IXLRange range) => range.RangeAddress.ToStringRelative();
    }

    /// <summary>Whether a spreadsheet would take words for a formula.</summary>
    public static bool NeedsQuote(string text) => text.Length > 0 && "=+-@'".Contains(text[0], StringComparison.Ordinal);

    static void PutWords(IXLCell cell, string text)
    {
        var clean = SafeText.Of(text, Most);
        cell.SetValue(clean);
        cell.DataType = XLDataType.Text;
        if (NeedsQuote(clean))
        {
            // Keeps it words when a user edits the cell.
            cell.Style.IncludeQuotePrefix = true;
        }
    }

    void PrintSetup(IXLWorksheet sheet)
    {
        var page = sheet.PageSetup;
        page.PageOrientation = XLPageOrientation.Landscape;
        page.PaperSize = production.Paper == PaperSize.A4 ? XLPaperSize.A4Paper : XLPaperSize.LetterPaper;
        page.FitToPages(1, 0);
        page.Margins.SetLeft(0.35).SetRight(0.35).SetTop(0.6).SetBottom(0.7);

        // In inches from the edge of the paper: at the default of three quarters the foot would be inside the table's margin and cut off.
        page.Margins.SetHeader(0.3).SetFooter(0.3);

        // An ampersand starts a code in a header.
        page.Footer.Left.AddText(SafeText.Of(production.Title.Value).Replace("&", "&&", StringComparison.Ordinal));
        page.Footer.Center.AddText(sheet.Name.Replace("&", "&&", StringComparison.Ordinal));
        page.Footer.Right.AddText(XLHFPredefinedText.PageNumber);
        page.Footer.Right.AddText(" / ");
        page.Footer.Right.AddText(XLHFPredefinedText.NumberOfPages);
    }
}
