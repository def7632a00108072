using System.Globalization;
using ClosedXML.Excel;
using Spoolbook.Papers.Ledger;

namespace Spoolbook.Papers.Workbook;

/// <summary>
/// The first sheet, which answers a producer at a glance: money, film, whether it lasts, shots missing, and two charts. Its
/// figures are those of the wrap summary's first page.
/// </summary>
/// <param name="Notices">What to know before any figure.</param>
/// <param name="Charts">The headings of the charts, in their order.</param>
sealed record AnswersSheet(
    string Title,
    string Subtitle,
    IReadOnlyList<string> Notices,
    IReadOnlyList<AnswerSection> Sections,
    IReadOnlyList<string> Charts
)
{
    /// <summary>The columns of the sheet, all of one width.</summary>
    public const int Columns = 12;

    const double ColumnWidth = 8.2;
    const int ChartRows = 16;
    const double LineHeight = 14;

    // In points: the sizes of a figure, the largest that fits first.
    static readonly double[] Sizes = [18, 14, 11];

    /// <summary>The answers of some books.</summary>
    public static AnswersSheet Of(LedgerSource source, WorkbookUnits units, WorkbookTerms say)
    {
        var production = source.Shoot.Production;
        return new(
            production.Title.Value,
            say.Fill(
                "subtitle",
                ("code", production.Code.Value),
                ("made", source.Made.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture))
            ),
            [
                .. source.IsDraft ? [say["note.draft"]] : (string[])[],
                .. production.Invented is { } invented ? [invented.Value] : (string[])[],
            ],
            Answers.Of(source, units, say),
            [say.Word("chart-stock"), say.Word("chart-account")]
        );
    }

    /// <summary>Writes it, and says where its charts go: the first row of each, counted from 0.</summary>
    public IReadOnlyList<ChartPlace> Write(SheetWriter writer)
    {
        var sheet = writer.Add("Summary");
        for (var c = 1; c <= Columns; c++)
        {
            sheet.Column(c).Width = ColumnWidth;
        }

        writer.Title(sheet, 1, Title, Subtitle);
        sheet.Cell(1, 1).Style.Font.SetFontSize(18);
        sheet.Row(1).Height = 26;
        var row = 4;
        foreach (var notice in Notices)
        {
            writer.Put(sheet.Cell(row, 1), notice, CellFormat.LongWords);
            var line = sheet.Range(row, 1, row, Columns).Merge();
            line.Style.Fill.SetBackgroundColor(SheetWriter.Alarm).Font.SetBold();
            sheet.Row(row).Height = Lines(notice, Columns, 10) * LineHeight;
            row += 2;
        }

        foreach (var section in Sections)
        {
            row = Section(writer, sheet, row, section);
        }

        var charts = new List<ChartPlace>();
        foreach (var heading in Charts)
        {
            Heading(writer, sheet, row, heading);
            charts.Add(new(row, row + ChartRows, Columns));
            row += ChartRows + 2;
        }

        sheet.PageSetup.PageOrientation = XLPageOrientation.Portrait;
        sheet.PageSetup.FitToPages(1, 1);
        sheet.PageSetup.PrintAreas.Add(1, 1, row - 2, Columns);
        return charts;
    }

    static void Heading(SheetWriter writer, IXLWorksheet sheet, int row, string words)
    {
        writer.Put(sheet.Cell(row, 1), words, CellFormat.Words);
        sheet.Range(row, 1, row, Columns).Style.Font.SetBold().Font.SetFontColor(SheetWriter.Ink).Fill.SetBackgroundColor(SheetWriter.Band);
    }

    // Returns the row below it, behind an empty one.
    static int Section(SheetWriter writer, IXLWorksheet sheet, int row, AnswerSection section)
    {
        Heading(writer, sheet, row++, section.Heading);
        var column = 1;
        foreach (var card in section.Cards)
        {
            if (column + card.Wide - 1 > Columns)
            {
                (row, column) = (row + 2, 1);
            }

            Card(writer, sheet, row, column, card);
            column += card.Wide;
        }

        row += section.Cards.Count == 0 ? 0 : 2;
        foreach (var note in section.Notes)
        {
            writer.Put(sheet.Cell(row, 1), note, CellFormat.LongWords);
            sheet.Range(row, 1, row, Columns).Merge().Style.Font.SetFontColor(SheetWriter.Quiet);
            sheet.Row(row).Height = Lines(note, Columns, 10) * LineHeight;
            row++;
        }

        return row + 1;
    }

    static void Card(SheetWriter writer, IXLWorksheet sheet, int row, int column, AnswerCard card)
    {
        var (what, figure) = (sheet.Cell(row, column), sheet.Cell(row + 1, column));
        writer.Put(what, card.What, CellFormat.LongWords);
        what.Style.Alignment.Vertical = XLAlignmentVerticalValues.Bottom;
        sheet.Range(row, column, row, column + card.Wide - 1).Merge().Style.Font.SetFontColor(SheetWriter.Quiet).Font.SetFontSize(9);
        var above = sheet.Row(row);
        above.Height = Math.Max(above.Height, (Lines(card.What, card.Wide, 9) * 12.5) + 3);
        writer.Put(figure, card.Value, CellFormat.LongWords);
        if (card.NumberFormat is { } format)
        {
            figure.Style.NumberFormat.Format = format;
        }

        var size = Sizes.FirstOrDefault(s => Lines(card.Says, card.Wide, s) == 1, Sizes[^1]);
        sheet.Range(row + 1, column, row + 1, column + card.Wide - 1).Merge().Style.Font.SetBold().Font.SetFontSize(size);
        var high = sheet.Row(row + 1);
        high.Height = Math.Max(high.Height, (Lines(card.Says, card.Wide, size) * size * 1.3) + 6);
    }

    // Estimated, because the library that measures text is not everywhere.
    static int Lines(string words, int wide, double size) =>
        words.Split('\n').Sum(line => Math.Max(1, (int)Math.Ceiling((line.Length + 1) * size / 10 / (wide * ColumnWidth * 1.1))));
}
