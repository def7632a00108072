using System.Text.RegularExpressions;
using ClosedXML.Excel;

namespace Spoolbook.Papers.Workbook;

/// <summary>
/// A sheet that is one table: title, a sentence, the sums of what is shown, then the table, so that rows can
/// be added below without end. The first four rows stay in sight and are repeated on every printed page.
/// </summary>
/// <param name="Name">The name of the sheet.</param>
/// <param name="About">One sentence about it.</param>
sealed partial record TableSheet<TRow>(string Name, string About, IReadOnlyList<Column<TRow>> Columns, IReadOnlyList<TRow> Rows)
{
    const int SumRow = 3;
    const int HeadRow = 4;

    /// <summary>The table's name in formulas; the sheet's unless given.</summary>
    public string Table { get; init; } = Name;

    /// <summary>How many pages lie beside one another when it is printed; a wide table is not to be read with a glass.</summary>
    public int PagesWide { get; init; } = 1;

    /// <summary>What more to do to the sheet once it is written.</summary>
    public Action<IXLWorksheet, IXLTable>? Finish { get; init; }

    public void Write(SheetWriter writer)
    {
        var sheet = writer.Add(Name);
        var columns = Columns.Select((column, c) => WriteColumn(writer, sheet, c + 1, column)).ToList();
        writer.Notes.Sheets.Add(new SheetNote(Name, Table, About, PagesWide, columns));

        // A table needs one row at least, if an empty one.
        var last = HeadRow + Math.Max(1, Rows.Count);
        var table = sheet.Range(HeadRow, 1, last, Columns.Count).CreateTable(Table);
        table.Theme = XLTableTheme.TableStyleLight1;
        Head(sheet);
        writer.Title(sheet, Name, About, PagesWide > 1 ? 2 : 1);
        sheet.SheetView.Freeze(HeadRow, 1);
        sheet.PageSetup.SetRowsToRepeatAtTop(1, HeadRow);
        if (PagesWide > 1)
        {
            sheet.PageSetup.FitToPages(PagesWide, 0);
            sheet.PageSetup.SetColumnsToRepeatAtLeft(1, 1);
        }

        Finish?.Invoke(sheet, table);
    }

    ColumnNote WriteColumn(SheetWriter writer, IXLWorksheet sheet, int c, Column<TRow> column)
    {
        sheet.Column(c).Width = column.Width;
        writer.Formats.Apply(sheet.Column(c).Style, column.Format);
        writer.Put(sheet.Cell(HeadRow, c), column.Head, CellFormat.Words);
        sheet.Cell(HeadRow, c).Style.Alignment.Horizontal = column.Format is CellFormat.Words or CellFormat.LongWords
            ? XLAlignmentHorizontalValues.Left
            : XLAlignmentHorizontalValues.Right;

        var sum = 0.0;
        var wraps = column.Format == CellFormat.LongWords;
        var formulas = new List<string>();
        var typed = Rows.Count == 0;
        for (var r = 0; r < Rows.Count; r++)
        {
            var written = column.Value(Rows[r]);
            var value = ForRow(written, HeadRow + 1 + r);
            typed |= written.Formula is null;
            formulas.AddRange(written.Formula is { } formula ? [RowNumber().Replace(formula, "$1…")] : []);
            writer.Put(sheet.Cell(HeadRow + 1 + r, c), value);
            sum += value.Number ?? 0;
            if (wraps && value.Text is { } words)
            {
                Heighten(sheet.Row(HeadRow + 1 + r), words, column.Width);
            }
        }

        column.Allowed?.Apply(sheet, c, HeadRow + 1, HeadRow + Math.Max(1, Rows.Count), column.Head);
        if (column.Summed)
        {
            // 109 leaves out rows that a filter hides.
            writer.Put(sheet.Cell(SumRow, c), CellValue.Calculated($"SUBTOTAL(109,{Table}[{column.Head}])", sum), column.Format);
        }

        if (column.Bars && Rows.Count > 1)
        {
            sheet.Range(HeadRow + 1, c, HeadRow + Rows.Count, c).AddConditionalFormat().DataBar(XLColor.FromHtml("#C9D8E6")).LowestValue().HighestValue();
        }

        return new ColumnNote(column.Head, column.Format, [.. formulas.Distinct(StringComparer.Ordinal)], typed, column.Allowed, column.Summed, column.Bars);
    }

    // Reckoned, since the library that measures text is not everywhere; a row that is a little too high does no harm.
    static void Heighten(IXLRow row, string words, double width)
    {
        const double LineHeight = 13.5;
        var lines = words.Split('\n').Sum(line => Math.Max(1, Math.Ceiling(line.Length / (width * 1.1))));
        row.Height = Math.Max(row.Height, Math.Min(lines, 30) * LineHeight);
    }

    CellValue ForRow(CellValue value, int row) => value.Formula is not { } formula ? value
        : value.Number is { } number ? CellValue.Calculated(Spelled(formula, row), number)
        : CellValue.CalculatedWords(Spelled(formula, row), value.Text ?? "");

    // [@Head] is how a spreadsheet shows it; the file spells it out. {row} is the row's number.
    string Spelled(string formula, int row) => ThisRow().Replace(formula, $"{Table}[[#This Row],[$1$2]]")
        .Replace("{row}", row.ToString(System.Globalization.CultureInfo.InvariantCulture), StringComparison.Ordinal);

    void Head(IXLWorksheet sheet)
    {
        var head = sheet.Range(HeadRow, 1, HeadRow, Columns.Count);
        head.Style.Font.SetBold().Font.SetFontColor(SheetWriter.Ink).Fill.SetBackgroundColor(SheetWriter.Band);
        head.Style.Alignment.SetVertical(XLAlignmentVerticalValues.Bottom).Alignment.SetWrapText();
        sheet.Row(HeadRow).Height = 28;

        var sums = sheet.Range(SumRow, 1, SumRow, Columns.Count);
        sums.Style.Font.SetBold().Font.SetFontColor(SheetWriter.Ink);
        sums.Style.Border.SetBottomBorder(XLBorderStyleValues.Thin).Border.SetBottomBorderColor(SheetWriter.Quiet);
        if (Columns.Any(c => c.Summed))
        {
            // The first column stands on the second page too, with what runs over its edge cut off.
            sheet.Cell(SumRow, 1).SetValue(PagesWide > 1 ? "Sum" : "Sum of the rows shown");
            sheet.Cell(SumRow, 1).Style.Alignment.SetWrapText(false).Alignment.SetHorizontal(XLAlignmentHorizontalValues.Left);
        }
    }

    [GeneratedRegex(@"\b([A-Z])[0-9]+\b")]
    private static partial Regex RowNumber();

    [GeneratedRegex(@"\[@(?:\[([^\]]+)\]|([^\[\]]+))\]")]
    private static partial Regex ThisRow();
}
