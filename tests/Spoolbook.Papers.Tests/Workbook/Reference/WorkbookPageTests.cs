using Spoolbook.Papers.Ledger;
using Spoolbook.Papers.Tests.Ledger;
using Spoolbook.Papers.Workbook;

namespace Spoolbook.Papers.Tests.Workbook.Reference;

public class WorkbookPageTests
{
    // Together they have a forecast, short ends, a stock log, and every kind of cost.
    static readonly LedgerSource[] Sources = [Shoots.Sample, Shoots.HalfWay, Shoots.Restocked, Shoots.Awkward, Shoots.WrongStock];
    static readonly WorkbookNotes[] Notes = [.. Sources.Select(s => FootageWorkbook.Notes(s, new WorkbookTerms(Workbooks.English)))];

    [Fact]
    public void The_page_of_the_workbook_is_what_is_written_into_it() =>
        ReferencePage.Holds(
            WorkbookPage.Markdown(
                Notes,
                new WorkbookTerms(Workbooks.German),
                [.. Sources.Select(s => FootageWorkbook.Notes(s, new WorkbookTerms(Workbooks.German)))]
            ),
            "Spoolbook.Papers/Workbook",
            "WORKBOOK.md",
            "reference-workbook"
        );

    [Fact]
    public void Every_typed_column_is_explained_and_no_other()
    {
        var columns = Notes[0]
            .Sheets.SelectMany(s =>
                s.Columns.Select(
                    (c, i) =>
                        (
                            Key: (s.Table, c.Head),
                            Reckoned: Notes.Any(n => n.Sheets.Single(o => o.Table == s.Table).Columns[i].Formulas.Count > 0)
                        )
                )
            )
            .ToList();
        Assert.Empty(columns.Where(c => !c.Reckoned).Select(c => c.Key).Except(ColumnDescriptions.All.Keys));
        Assert.Empty(ColumnDescriptions.All.Keys.Except(columns.Select(c => c.Key)));
    }
}
