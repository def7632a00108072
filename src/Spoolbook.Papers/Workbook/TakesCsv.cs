using System.Collections.Immutable;
using System.Globalization;
using Spoolbook.Papers.Ledger;
using Spoolbook.Papers.Wording;

namespace Spoolbook.Papers.Workbook;

/// <summary>
/// Every take as plain text, in the form of RFC 4180: the workbook's sheet of takes without what a spreadsheet works out. The import
/// reads it, and finds nothing to change.
/// </summary>
static class TakesCsv
{
    static readonly ImmutableHashSet<string> _workedOut = ["Screen time", "Scene and shot", "Good frames", "New shot"];

    /// <summary>The table, with its heads in the words of the production's language.</summary>
    public static string Write(LedgerSource source, Translations words)
    {
        var say = new WorkbookTerms(words);
        var takes = TakesSheet.Of(source, new WorkbookUnits(source.Shoot.Production), say);
        var columns = takes.Columns.Where(c => !_workedOut.Contains(c.Head)).ToList();
        var text = new CsvText();
        text.Add(columns.Select(c => say.Head(takes.Table, c.Head)));
        foreach (var take in takes.Rows)
        {
            text.Add(columns.Select(column => Cell(column.Value(take), code => Said(column.Codes, code, takes.Table, say))));
        }

        return text.ToString();
    }

    static string Said(IReadOnlyList<string> codes, string text, string table, WorkbookTerms say) =>
        codes.Contains(text) ? say.Code(table, text) : text;

    static string Cell(CellValue value, Func<string, string> said) =>
        value.Text is { } text ? SafeText.Of(said(text))
        : value.Moment is { } moment ? moment.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)
        : value.Number is { } number ? number.ToString("R", CultureInfo.InvariantCulture)
        : "";
}
