using ClosedXML.Excel;
using Spoolbook.Papers.Ledger;

namespace Spoolbook.Papers.Workbook;

/// <summary>The figures behind the first sheet, each with its name for formulas, and how to read the workbook.</summary>
/// <param name="HowToRead">Paragraphs below the figures, under the heading <paramref name="Reading"/>.</param>
sealed record FiguresSheet(IReadOnlyList<SummarySection> Sections, string Reading, IReadOnlyList<string> HowToRead)
{
    const int FirstRow = 4;
    const int Columns = 4;

    public static FiguresSheet Of(LedgerSource source, WorkbookUnits units, WorkbookTerms say) =>
        new(
            SummaryFigures.Of(source, units, say),
            say["heading.how-to-read-it"],
            [units.InMetres ? say["note.metres"] : say["note.feet"], say["note.film"], say["note.sums"]]
        );

    public void Write(SheetWriter writer)
    {
        var sheet = writer.Add("Figures");
        writer.Notes.SummaryCalled = sheet.Name;
        writer.Title(sheet, 1, sheet.Name, writer.Words["about.figures"]);
        (sheet.Column(1).Width, sheet.Column(2).Width, sheet.Column(3).Width, sheet.Column(4).Width) = (31, 13, 11, 62);
        writer.Put(sheet.Cell(3, 3), writer.Words["frames"], CellFormat.Words);
        sheet.Cell(3, 3).Style.Font.SetFontColor(SheetWriter.Quiet).Alignment.SetHorizontal(XLAlignmentHorizontalValues.Right);
        var row = FirstRow;
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

    // Leaves a blank line before it, except at the top; returns the row below.
    static int Heading(SheetWriter writer, IXLWorksheet sheet, int row, string words)
    {
        row += row > FirstRow ? 1 : 0;
        writer.Put(sheet.Cell(row, 1), words, CellFormat.Words);
        sheet.Range(row, 1, row, Columns).Style.Font.SetBold().Font.SetFontColor(SheetWriter.Ink).Fill.SetBackgroundColor(SheetWriter.Band);
        return row + 1;
    }

    static void Line(SheetWriter writer, IXLWorksheet sheet, int row, SummaryLine line)
    {
        var isFilm = line.Format == CellFormat.Length;
        if (line.Name is { } name)
        {
            var figure = sheet.Cell(row, isFilm ? 3 : 2);
            sheet.Workbook.NamedRanges.Add(name, figure.AsRange());
        }

        writer.Notes.Summary.Add(new LineNote(line.Label.Trim(), line.Value.Formula, line.Format, line.Name));
        writer.Put(sheet.Cell(row, 1), line.Label, CellFormat.Words);
        if (isFilm)
        {
            writer.Put(sheet.Cell(row, 3), line.Value, CellFormat.Frames);
            writer.Put(sheet.Cell(row, 2), Shown(writer.Units, line), CellFormat.Length);
            sheet.Cell(row, 3).Style.Font.SetFontColor(SheetWriter.Quiet);
        }
        else
        {
            writer.Put(
                sheet.Cell(row, 2),
                line.Value is { Text: { Length: > 0 } code } && line.Name != "FilmUnit"
                    ? line.Value.Saying(writer.Words.Code(null, code))
                    : line.Value,
                line.Format
            );
        }

        sheet.Cell(row, 2).Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Right;
        writer.Put(sheet.Cell(row, 4), line.Remark, CellFormat.LongWords);
        sheet.Row(row).Height = 13.5 * Math.Max(1, Math.Ceiling(line.Remark.Length / 66.0));
        sheet.Cell(row, 4).Style.Font.SetFontColor(SheetWriter.Quiet).Alignment.SetIndent(1);
    }

    // Film that nobody knows yet is an empty cell, which a person may fill in.
    static CellValue Shown(WorkbookUnits units, SummaryLine line)
    {
        var film = units.Shown(line.Shows ?? line.Name!, line.Film ?? Film.Footage.Zero, line.Centimetres);
        var formula = $"IF({line.Name}=\"\",\"\",{film.Formula})";
        return line.Film is null ? CellValue.CalculatedWords(formula, "")
            : film.Number is { } number ? CellValue.Calculated(formula, number)
            : CellValue.CalculatedWords(formula, film.Text!);
    }

    static void Words(SheetWriter writer, IXLWorksheet sheet, int row, string words)
    {
        sheet.Range(row, 1, row, Columns).Merge();
        writer.Put(sheet.Cell(row, 1), words, CellFormat.LongWords);
        sheet.Row(row).Height = 27;
    }
}
