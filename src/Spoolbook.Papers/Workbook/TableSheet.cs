using ClosedXML.Excel;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Papers.Workbook;

/// <summary>
/// A sheet that is one table: title, a sentence, the sums of what is shown, then the table, so that rows can be added
/// below. The first four rows stay in sight and are repeated on every printed page.
/// </summary>
/// <param name="Name">The name of the sheet in the house's terms.</param>
/// <param name="About">One sentence about it, as in the workbook.</param>
sealed record TableSheet<TRow>(string Name, string About, IReadOnlyList<Column<TRow>> Columns, IReadOnlyList<TRow> Rows) : ITableSheet
{
    const int SumRow = 3;
    const int HeadRow = 4;
    const double LineHeight = 13.5;

    // Added to the letters of a column.
    const double Padding = 2.5;

    // The width of a letter of the title, which on a second page is over the first column alone.
    const double TitleLetter = 1.6;

    /// <summary>The table's name in formulas, the same in every language; by default the sheet's in the house's terms.</summary>
    public string Table { get; init; } = Name;

    /// <summary>How many printed pages are side by side, so that a wide table stays readable.</summary>
    public int PagesWide { get; init; } = 1;

    /// <summary>What else to do to the sheet once it is written.</summary>
    public Action<WrittenTable>? Finish { get; init; }

    public ITableSheet Behind(string head, CellFormat format, CellValue value) =>
        this with
        {
            Columns = [new(head, format, head.Length + Padding, _ => value), .. Columns],
        };

    public void Write(SheetWriter writer)
    {
        var sheet = writer.Add(Name);
        var heads = Heads(writer.Words);
        var columns = Columns.Select((column, c) => WriteColumn(writer, sheet, c + 1, column, heads[c])).ToList();
        writer.Notes.Sheets.Add(new SheetNote(Name, Table, About, PagesWide, columns));

        // A table needs at least one row, even if it is empty.
        var last = HeadRow + Math.Max(1, Rows.Count);
        var table = sheet.Range(HeadRow, 1, last, Columns.Count).CreateTable(Table);
        table.Theme = XLTableTheme.TableStyleLight1;
        Head(sheet, heads, writer.Words);
        writer.Title(sheet, sheet.Name, About, PagesWide > 1 ? 2 : 1);
        sheet.SheetView.Freeze(HeadRow, 1);
        sheet.PageSetup.SetRowsToRepeatAtTop(1, HeadRow);
        if (PagesWide > 1)
        {
            sheet.PageSetup.FitToPages(PagesWide, 0);
            sheet.PageSetup.SetColumnsToRepeatAtLeft(1, 1);
        }

        Finish?.Invoke(new WrittenTable(sheet, table, writer.Words));
    }

    // A spreadsheet finds a column by its head, and ignores case.
    List<string> Heads(WorkbookTerms say)
    {
        var heads = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var column in Columns)
        {
            var called = say.Head(Table, column.Head);
            if (!heads.TryAdd(called, column.Head))
            {
                throw new UnfitWordException(
                    say.HeadKey(Table, column.Head),
                    Sentence.Of("paper/words.value.head-twice", ("called", called), ("column", heads[called]), ("sheet", say.Sheet(Name)))
                );
            }
        }

        return [.. heads.Keys];
    }

    ColumnNote WriteColumn(SheetWriter writer, IXLWorksheet sheet, int c, Column<TRow> column, string head)
    {
        var called = Called(writer.Words, column);
        var wider = Math.Max(
            head == column.Head ? 0 : Wider(column.Width, head.Split(' ')),
            Wider(column.Width, called.Where(c => c.Key != c.Value).Select(c => c.Value))
        );
        sheet.Column(c).Width =
            column.Width + Math.Max(wider, c == 1 && PagesWide > 1 ? Math.Max(0, TitleLetter * (sheet.Name.Length - Name.Length)) : 0);
        writer.Formats.Apply(sheet.Column(c).Style, column.Format);
        writer.Put(sheet.Cell(HeadRow, c), head, CellFormat.Words);
        sheet.Cell(HeadRow, c).Style.Alignment.Horizontal = column.Format is CellFormat.Words or CellFormat.LongWords
            ? XLAlignmentHorizontalValues.Left
            : XLAlignmentHorizontalValues.Right;

        var sum = 0.0;
        var wraps = column.Format == CellFormat.LongWords;
        var formulas = new List<string>();
        var typed = Rows.Count == 0;
        for (var r = 0; r < Rows.Count; r++)
        {
            var value = column.Value(Rows[r]);
            typed |= value.Formula is null;
            formulas.AddRange(value.Formula is { } formula ? [formula] : []);
            value = value.Text is { Length: > 0 } code && column.Codes.Count > 0 ? value.Saying(called[code]) : value;
            writer.Put(sheet.Cell(HeadRow + 1 + r, c), value, Table);
            sum += value.Number ?? 0;
            if (wraps && value.Text is { } words)
            {
                Heighten(sheet.Row(HeadRow + 1 + r), words, column.Width);
            }
        }

        column.Allowed?.Apply(sheet, c, HeadRow + 1, HeadRow + Math.Max(1, Rows.Count), head, code => called[code], writer.Words);
        if (column.Summed)
        {
            // 109 leaves out rows that a filter hides.
            writer.Put(sheet.Cell(SumRow, c), CellValue.Calculated($"SUBTOTAL(109,{Table}[{column.Head}])", sum), column.Format);
        }

        if (column.Bars && Rows.Count > 1)
        {
            sheet
                .Range(HeadRow + 1, c, HeadRow + Rows.Count, c)
                .AddConditionalFormat()
                .DataBar(XLColor.FromHtml("#C9D8E6"))
                .LowestValue()
                .HighestValue();
        }

        return new ColumnNote(
            column.Head,
            column.Format,
            [.. formulas.Distinct(StringComparer.Ordinal)],
            typed,
            column.Allowed,
            column.Codes,
            column.Summed,
            column.Bars
        );
    }

    // The workbook's names for the codes of a column. Two with the same name could not be told apart.
    Dictionary<string, string> Called(WorkbookTerms say, Column<TRow> column)
    {
        var called = column.Codes.ToDictionary(code => code, code => say.Code(Table, code), StringComparer.Ordinal);
        var twice = called.GroupBy(c => c.Value, StringComparer.OrdinalIgnoreCase).FirstOrDefault(g => g.Count() > 1);
        return twice is null
            ? called
            : throw new UnfitWordException(
                "book.code." + twice.Last().Key,
                Sentence.Of(
                    "paper/words.value.code-twice",
                    ("called", twice.Key),
                    ("first", twice.First().Key),
                    ("column", column.Head),
                    ("sheet", say.Sheet(Name))
                )
            );
    }

    // A width is chosen for the house's terms; longer words in another language get that much more.
    static double Wider(double width, IEnumerable<string> words) =>
        Math.Max(0, words.Select(w => w.Length).DefaultIfEmpty().Max() + Padding - width);

    // Estimated, because the library that measures text is not everywhere. A row that is a little too high does no harm.
    static void Heighten(IXLRow row, string words, double width)
    {
        var lines = words.Split('\n').Sum(line => Math.Max(1, Math.Ceiling(line.Length / (width * 1.1))));
        row.Height = Math.Max(row.Height, Math.Min(lines, 30) * LineHeight);
    }

    void Head(IXLWorksheet sheet, List<string> heads, WorkbookTerms say)
    {
        var head = sheet.Range(HeadRow, 1, HeadRow, Columns.Count);
        head.Style.Font.SetBold().Font.SetFontColor(SheetWriter.Ink).Fill.SetBackgroundColor(SheetWriter.Band);
        head.Style.Alignment.SetVertical(XLAlignmentVerticalValues.Bottom).Alignment.SetWrapText();
        sheet.Row(HeadRow).Height = 1 + (heads.Select((h, c) => Math.Max(2, LinesOf(h, sheet.Column(c + 1).Width))).Max() * LineHeight);

        var sums = sheet.Range(SumRow, 1, SumRow, Columns.Count);
        sums.Style.Font.SetBold().Font.SetFontColor(SheetWriter.Ink);
        sums.Style.Border.SetBottomBorder(XLBorderStyleValues.Thin).Border.SetBottomBorderColor(SheetWriter.Quiet);
        if (Columns.Any(c => c.Summed))
        {
            // The first column is on the second page too, with anything over its edge cut off.
            sheet.Cell(SumRow, 1).SetValue(say[PagesWide > 1 ? "sum" : "sum-of-rows"]);
            sheet.Cell(SumRow, 1).Style.Alignment.SetWrapText(false).Alignment.SetHorizontal(XLAlignmentHorizontalValues.Left);
        }
    }

    // Word by word, as a spreadsheet breaks a head.
    static int LinesOf(string head, double width)
    {
        var (lines, used) = (1, 0);
        foreach (var word in head.Split(' '))
        {
            var with = used == 0 ? word.Length : used + 1 + word.Length;
            (lines, used) = with <= width + 1 || used == 0 ? (lines, with) : (lines + 1, word.Length);
        }

        return lines;
    }
}
