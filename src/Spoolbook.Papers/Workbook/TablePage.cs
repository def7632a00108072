using ClosedXML.Excel;

namespace Spoolbook.Papers.Workbook;

/// <summary>
/// A sheet of tables that are read together, one below the other. The columns that only lead to a figure are right of the
/// printed ones, out of the print area.
/// </summary>
/// <param name="Name">The name of the sheet in the house's terms.</param>
sealed record TablePage(string Name, IReadOnlyList<ITableSheet> Tables)
{
    // Between a table and the heading of the next.
    const int Gap = 2;

    // A table that is alone grows downwards as far as anybody types.
    const int RowsMore = 500;

    // The characters across an upright page at a size that is read with ease.
    const double Portrait = 140;

    public void Write(SheetWriter writer)
    {
        var sheet = writer.Add(Name);
        var widths = new List<double>();
        foreach (var table in Tables)
        {
            foreach (var (c, width) in table.Widths(writer.Words).Index())
            {
                if (c == widths.Count)
                {
                    widths.Add(0);
                }

                widths[c] = Math.Max(widths[c], width);
            }
        }

        foreach (var (c, width) in widths.Index())
        {
            sheet.Column(c + 1).Width = width;
        }

        var top = 1;
        foreach (var (i, table) in Tables.Index())
        {
            table.Write(writer, sheet, top, i == Tables.Count - 1 ? RowsMore : Gap, Tables.Count == 1);
            top += TableRows.Before + table.Length + Gap;
        }

        // A narrow sheet would be blown up across the paper, and take more of it.
        if (widths.Take(Tables.Max(t => t.Printed)).Sum() < Portrait)
        {
            sheet.PageSetup.PageOrientation = XLPageOrientation.Portrait;
        }

        sheet.SheetView.Freeze(Tables.Count == 1 ? TableRows.Before : 0, 1);
        if (Tables.Count == 1)
        {
            sheet.PageSetup.SetRowsToRepeatAtTop(1, TableRows.Before);
        }
        else
        {
            // Rows repeat on the pages behind them. The last table is the long one, so that nothing else is there.
            var heads = top - Gap - Tables[^1].Length - 1;
            sheet.PageSetup.SetRowsToRepeatAtTop(heads, heads);
        }

        sheet.PageSetup.PrintAreas.Add(1, 1, top - Gap - 1, Tables.Max(t => t.Printed));
    }
}
