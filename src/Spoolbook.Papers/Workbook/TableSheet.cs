using ClosedXML.Excel;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Papers.Workbook;

/// <summary>
/// A table of a sheet: heading, a sentence, the sums of what is shown, then the table itself, so that rows can be added
/// below.
/// </summary>
/// <param name="Name">Its heading in the house's terms.</param>
/// <param name="About">One sentence about it, as in the workbook.</param>
/// <param name="Columns">Its columns; those that are not printed go behind the others.</param>
sealed record TableSheet<TRow>(string Name, string About, IReadOnlyList<Column<TRow>> Columns, IReadOnlyList<TRow> Rows) : ITableSheet
{
    const double LineHeight = 13.5;

    // Added to the letters of a column.
    const double Padding = 1.5;

    /// <summary>The table's name in formulas, the same in every language; by default its heading in the house's terms.</summary>
    public string Table { get; init; } = Name;

    /// <summary>What else to do to the sheet once it is written.</summary>
    public Action<WrittenTable>? Finish { get; init; }

    public int Printed => Columns.Count(c => !c.Aside);

    // A table needs at least one row, even if it is empty.
    public int Length => Math.Max(1, Rows.Count);

    // The printed ones, then the steps on the way to them, then the frames of the lengths.
    List<Column<TRow>> All =>
        [
            .. Columns.Where(c => !c.Aside),
            .. Columns.Where(c => c.Aside),
            .. Columns.Select(c => c.Frames).OfType<Column<TRow>>().Select(f => f with { Aside = true }),
        ];

    public ITableSheet Behind(string head, CellFormat format, CellValue value) =>
        this with
        {
            Columns = [new(head, format, head.Length + Padding, _ => value), .. Columns],
        };

    public IEnumerable<double> Widths(WorkbookTerms say) =>
        All.Select(column =>
        {
            var head = say.Head(Table, column.Head);
            return column.Width
                + Math.Max(
                    head == column.Head ? 0 : Wider(column.Width, head.Split(' ')),
                    Wider(column.Width, Called(say, column).Where(c => c.Key != c.Value).Select(c => c.Value))
                );
        });

    public void Write(SheetWriter writer, IXLWorksheet sheet, int top, int rowsMore, bool isAlone)
    {
        var heads = Heads(writer.Words);
        var all = All;
        var headRow = top + TableRows.Heads;
        var place = new TablePlace(sheet, headRow, headRow + Length, rowsMore, isAlone);
        var columns = all.Select((column, c) => WriteColumn(writer, place, c + 1, column, heads[c])).ToList();
        writer.Notes.Sheets.Add(new SheetNote(Name, Table, About, sheet.Name, columns));

        // The library fills all cells of a table with nothing, so that it gets the beginning of a long one.
        var whole = sheet.Range(headRow, 1, place.Last, all.Count);
        var known = IsLong(place) ? writer.Shorten(whole, headRow + LateCells.After, Table) : whole;
        var table = known.CreateTable(Table);
        table.Theme = XLTableTheme.TableStyleLight1;
        Head(place, heads, all, writer.Words);
        writer.Title(sheet, top, writer.Words.Sheet(Name), About);
        Finish?.Invoke(new WrittenTable(sheet, table, writer.Words));
        writer.Written[Table] = new WrittenTable(sheet, table, writer.Words);
    }

    bool IsLong(TablePlace place) => place.IsAlone && Finish is null && Rows.Count > LateCells.After;

    // A spreadsheet finds a column by its head, and ignores case.
    List<string> Heads(WorkbookTerms say)
    {
        var heads = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var column in All)
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

    ColumnNote WriteColumn(SheetWriter writer, TablePlace place, int c, Column<TRow> column, string head)
    {
        var (sheet, headRow) = (place.Sheet, place.HeadRow);
        var called = Called(writer.Words, column);
        var style = place.IsAlone ? sheet.Column(c).Style : sheet.Cell(headRow + 1, c).Style;
        writer.Formats.Apply(style, column.Format);
        if (column.Aside)
        {
            style.Font.SetFontColor(SheetWriter.Quiet);
        }

        if (!place.IsAlone)
        {
            // All at once: each property set on a range goes through all its cells.
            sheet.Range(headRow + 1, c, place.Last, c).Style = style;
        }

        writer.Put(sheet.Cell(headRow, c), head, CellFormat.Words);
        sheet.Cell(headRow, c).Style.Alignment.Horizontal = column.Format is CellFormat.Words or CellFormat.LongWords
            ? XLAlignmentHorizontalValues.Left
            : XLAlignmentHorizontalValues.Right;

        var sum = 0.0;
        var film = Footage.Zero;
        var wraps = column.Format == CellFormat.LongWords;
        var formulas = new List<string>();
        var typed = Rows.Count == 0;
        var isLong = IsLong(place);
        for (var r = 0; r < Rows.Count; r++)
        {
            var value = column.Value(Rows[r]);
            typed |= value.Formula is null;
            formulas.AddRange(value.Formula is { } formula ? [formula] : []);
            value = value.Text is { Length: > 0 } code && column.Codes.Count > 0 ? value.Saying(called[code]) : value;
            if (isLong)
            {
                writer.PutInLong(sheet, r, headRow + 1 + r, c, value, Table);
            }
            else
            {
                writer.Put(sheet.Cell(headRow + 1 + r, c), value, Table);
            }

            sum += value.Number ?? 0;
            film += column.Film?.Invoke(Rows[r]) ?? Footage.Zero;
            if (wraps && value.Text is { } words)
            {
                Heighten(sheet.Row(headRow + 1 + r), words, column.Width);
            }
        }

        column.Allowed?.Apply(place, c, head, code => called[code], writer.Words);
        if (column.Summed)
        {
            // 109 leaves out rows that a filter hides. Words of feet and frames add up by their frames.
            var sumOf = $"SUBTOTAL(109,{Table}[{column.FramesHead ?? column.Head}])";
            var total =
                column.FramesHead is null ? CellValue.Calculated(sumOf, sum)
                : writer.Units.InMetres ? CellValue.Calculated($"SUBTOTAL(109,{Table}[{column.Head}])", sum)
                : writer.Units.Shown(sumOf, film);
            writer.Put(sheet.Cell(headRow - 1, c), total, column.Format);
        }

        if (column.Bars && Rows.Count > 1)
        {
            sheet
                .Range(headRow + 1, c, headRow + Rows.Count, c)
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
            column.Bars,
            column.Aside
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

    static void Head(TablePlace place, List<string> heads, List<Column<TRow>> all, WorkbookTerms say)
    {
        var (sheet, row) = (place.Sheet, place.HeadRow);
        var head = sheet.Range(row, 1, row, all.Count);
        head.Style.Font.SetBold().Font.SetFontColor(SheetWriter.Ink).Fill.SetBackgroundColor(SheetWriter.Band);
        head.Style.Alignment.SetVertical(XLAlignmentVerticalValues.Bottom).Alignment.SetWrapText();
        sheet.Row(row).Height = 1 + (heads.Select((h, c) => Math.Max(2, LinesOf(h, sheet.Column(c + 1).Width))).Max() * LineHeight);

        var sums = sheet.Range(row - 1, 1, row - 1, all.Count);
        sums.Style.Font.SetBold().Font.SetFontColor(SheetWriter.Ink);
        sums.Style.Border.SetBottomBorder(XLBorderStyleValues.Thin).Border.SetBottomBorderColor(SheetWriter.Quiet);
        if (all.Exists(c => c.Summed))
        {
            sheet.Cell(row - 1, 1).SetValue(say["sum-of-rows"]);
            sheet.Cell(row - 1, 1).Style.Alignment.SetWrapText(false).Alignment.SetHorizontal(XLAlignmentHorizontalValues.Left);
        }

        if (all.FindIndex(c => c.Aside) is > 0 and var aside)
        {
            sheet.Range(row - 1, aside + 1, row, all.Count).Style.Font.SetFontColor(SheetWriter.Quiet);
        }
    }

    // Word by word, as a spreadsheet breaks a head.
    static int LinesOf(string head, double width)
    {
        var (lines, used) = (1, 0);
        foreach (var word in head.Split(' '))
        {
            var with = used == 0 ? word.Length : used + 1 + word.Length;
            (lines, used) = with <= width - 0.5 || used == 0 ? (lines, with) : (lines + 1, word.Length);
        }

        return lines;
    }
}
