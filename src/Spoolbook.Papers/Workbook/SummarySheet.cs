using System.Globalization;
using ClosedXML.Excel;
using Spoolbook.Papers.Ledger;

namespace Spoolbook.Papers.Workbook;

/// <summary>The first sheet: the figures that a producer opens the workbook for, and how to read the rest.</summary>
/// <param name="Notices">What to know before any figure.</param>
/// <param name="HowToRead">Paragraphs below the figures, under the heading <paramref name="Reading"/>.</param>
sealed record SummarySheet(
    string Title,
    string Subtitle,
    IReadOnlyList<string> Notices,
    IReadOnlyList<SummarySection> Sections,
    string Reading,
    IReadOnlyList<string> HowToRead
)
{
    const int FirstRow = 4;

    public static SummarySheet Of(LedgerSource source, WorkbookUnits units, WorkbookTerms say)
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
            SummaryFigures.Of(source, units, say),
            say["heading.how-to-read-it"],
            [
                units.InMetres ? say["note.metres"] : say.Fill("note.feet", ("frames", units.FramesPerFoot.ToString())),
                say["note.film"],
                say["note.sums"],
            ]
        );
    }

    public void Write(SheetWriter writer)
    {
        var sheet = writer.Add("Summary");
        writer.Notes.SummaryCalled = sheet.Name;
        writer.Title(sheet, Title, Subtitle);
        (sheet.Column(1).Width, sheet.Column(2).Width, sheet.Column(3).Width) = (30, 18, 62);
        var row = FirstRow;
        foreach (var notice in Notices)
        {
            Notice(writer, sheet, row, notice);
            row += 2;
        }

        foreach (var section in Sections)
        {
            row = Heading(writer, sheet, row, section.Heading);
            foreach (var line in section.Lines)
            {
                Line(writer, sheet, row++, line);
            }
        }

        row = Heading(writer, sheet, row, Reading);
        foreach (var words in HowToRead)
        {
            Words(writer, sheet, row++, words);
        }

        sheet.SheetView.FreezeRows(3);
        sheet.PageSetup.PageOrientation = XLPageOrientation.Portrait;
        sheet.PageSetup.FitToPages(1, 1);
    }

    static void Notice(SheetWriter writer, IXLWorksheet sheet, int row, string words)
    {
        writer.Put(sheet.Cell(row, 1), words, CellFormat.Words);
        sheet.Range(row, 1, row, 3).Style.Fill.SetBackgroundColor(SheetWriter.Alarm);
        sheet.Cell(row, 1).Style.Font.SetBold();
    }

    // Leaves a blank line before it, except at the top; returns the row below.
    static int Heading(SheetWriter writer, IXLWorksheet sheet, int row, string words)
    {
        row += row > FirstRow ? 1 : 0;
        writer.Put(sheet.Cell(row, 1), words, CellFormat.Words);
        sheet.Range(row, 1, row, 3).Style.Font.SetBold().Font.SetFontColor(SheetWriter.Ink).Fill.SetBackgroundColor(SheetWriter.Band);
        return row + 1;
    }

    static void Line(SheetWriter writer, IXLWorksheet sheet, int row, SummaryLine line)
    {
        if (line.Name is { } name)
        {
            sheet.Workbook.NamedRanges.Add(name, sheet.Range(row, 2, row, 2));
        }

        writer.Notes.Summary.Add(new LineNote(line.Label.Trim(), line.Value.Formula, line.Format, line.Name));
        writer.Put(sheet.Cell(row, 1), line.Label, CellFormat.Words);
        writer.Put(
            sheet.Cell(row, 2),
            line.Value.Text is { Length: > 0 } code ? line.Value.Saying(writer.Words.Code(null, code)) : line.Value,
            line.Format
        );
        sheet.Cell(row, 2).Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Right;
        writer.Put(sheet.Cell(row, 3), line.Remark, CellFormat.Words);
        sheet.Cell(row, 3).Style.Font.SetFontColor(SheetWriter.Quiet).Alignment.SetIndent(1);
    }

    static void Words(SheetWriter writer, IXLWorksheet sheet, int row, string words)
    {
        sheet.Range(row, 1, row, 3).Merge();
        writer.Put(sheet.Cell(row, 1), words, CellFormat.LongWords);
        sheet.Row(row).Height = 27;
    }
}
