using System.Collections.Immutable;
using ClosedXML.Excel;
using Spoolbook.Papers.Workbook;

namespace Spoolbook.Papers.Terms;

/// <summary>The term as a workbook: a sheet for each table, for a department that goes on with it.</summary>
static class TermWorkbook
{
    const int WidestName = 31;

    /// <summary>The workbook as a file: the same bytes for the same tables.</summary>
    public static byte[] Make(ImmutableArray<TermTable> tables, string title, DateOnly made)
    {
        using var book = new XLWorkbook();
        var day = made.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
        book.Author = "Spoolbook";
        book.Properties.Author = "Spoolbook";
        book.Properties.LastModifiedBy = "Spoolbook";
        book.Properties.Title = title;
        book.Properties.Created = day;
        book.Properties.Modified = day;
        foreach (var table in tables)
        {
            Write(book.AddWorksheet(table.Title.Length > WidestName ? table.Title[..WidestName] : table.Title), table);
        }

        using var saved = new MemoryStream();
        book.SaveAs(saved);
        return WorkbookFinish.Apply(saved, new Caches(), [], made);
    }

    static void Write(IXLWorksheet sheet, TermTable table)
    {
        foreach (var (at, column) in table.Columns.Index())
        {
            var head = sheet.Cell(1, at + 1);
            head.SetValue(column.Head);
            head.Style.Font.Bold = true;
            head.Style.Alignment.Horizontal = column.IsNumber ? XLAlignmentHorizontalValues.Right : XLAlignmentHorizontalValues.Left;
            var widest = table.Rows.Select(r => r.Cells[at].Text.Length).Append(column.Head.Length).Max();
            sheet.Column(at + 1).Width = Math.Clamp(widest + 2, 8, 60);
        }

        foreach (var (line, row) in table.Rows.Index())
        {
            foreach (var (at, cell) in row.Cells.Index())
            {
                var to = sheet.Cell(line + 2, at + 1);
                if (cell.Number is { } number && table.Columns[at].IsNumber)
                {
                    to.SetValue(number);
                }
                else
                {
                    to.SetValue(cell.Text);
                }

                to.Style.Font.Bold = row.IsTotal;
            }
        }

        sheet.SheetView.FreezeRows(1);
        sheet.PageSetup.PageOrientation = XLPageOrientation.Landscape;
    }
}
