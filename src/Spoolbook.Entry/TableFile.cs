using System.Globalization;
using Spoolbook.Entry.Tables;
using Spoolbook.Entry.Takes;

namespace Spoolbook.Entry;

/// <summary>A file with a table of takes in it: our workbook, or plain text.</summary>
static class TableFile
{
    static readonly byte[] _zip = [0x50, 0x4B];
    static readonly byte[] _compound = [0xD0, 0xCF, 0x11, 0xE0];

    /// <summary>The table in a file. Its contents decide the format, not its name.</summary>
    /// <exception cref="TableFault">The file cannot be read.</exception>
    public static TakeTable Read(string name, byte[] bytes, TakeHeads heads, Objections objections, Objections notes)
    {
        if (bytes.Length > Limits.MostBytes)
        {
            throw new TableFault(
                name,
                string.Create(CultureInfo.InvariantCulture, $"The file is longer than {Limits.MostBytes / 1_000_000} MB."),
                "See whether another file was saved under this name."
            );
        }

        if (bytes.AsSpan().StartsWith(_compound))
        {
            throw new TableFault(
                name,
                "The workbook is protected with a password, or saved in an old form.",
                "Take the password off, and save it as .xlsx."
            );
        }

        if (bytes.AsSpan().StartsWith(_zip))
        {
            return TakeTable.Read(Sheet(name, bytes, heads), heads, objections);
        }

        return TakeTable.Read(Text(name, bytes, heads, notes), heads, objections);
    }

    // Found by its name, or by its heads where the sheet was copied into another workbook.
    static Table Sheet(string name, byte[] bytes, TakeHeads heads)
    {
        using var book = XlsxWorkbook.Open(name, bytes);
        var named = book.Sheets.Where(s => heads.IsSheet(s.Name)).Take(1).ToList();
        if (named.Count > 0)
        {
            return book.Read(named[0].Name, named[0].Part);
        }

        var fit = book
            .Sheets.Take(Limits.MostSheets)
            .Select(s => book.Read(s.Name, s.Part))
            .Where(t => TakeTable.HasHeads(t, heads))
            .ToList();
        return fit.Count switch
        {
            1 => fit[0],
            0 => throw new TableFault(
                name,
                $"The workbook has no sheet '{heads.Sheet}', and none with its heads.",
                $"Name the sheet '{heads.Sheet}', and write its heads over the columns: at least "
                    + $"{string.Join(", ", TakeHeads.Needed.Select(heads.Name))}."
            ),
            _ => throw new TableFault(
                name,
                $"Several sheets of the workbook could be the takes: {string.Join(", ", fit.Select(t => t.Name))}.",
                $"Name the one that is meant '{heads.Sheet}'."
            ),
        };
    }

    static Table Text(string name, byte[] bytes, TakeHeads heads, Objections notes)
    {
        var text = TableText.Decode(name, bytes, notes);
        return CsvTable.Read(name, text, CsvTable.SeparatorOf(text, heads));
    }
}
