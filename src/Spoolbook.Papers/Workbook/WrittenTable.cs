using ClosedXML.Excel;

namespace Spoolbook.Papers.Workbook;

/// <summary>A written table, to look things up in by the house's terms.</summary>
sealed record WrittenTable(IXLWorksheet Sheet, IXLTable Table, WorkbookTerms Words)
{
    /// <summary>The cells of a column below its head.</summary>
    public IXLRange Cells(string head)
    {
        var called = Words.Head(Table.Name, head);
        var column = Table.Fields.First(f => f.Name == called).Column;
        return Sheet.Range(column.FirstCell().CellBelow().Address, column.LastCell().Address);
    }

    /// <summary>Colours the cells of a column in the rows where a formula is true.</summary>
    public void MarkWhere(string head, string formula, XLColor colour) =>
        Cells(head)
            .AddConditionalFormat()
            .WhenIsTrue(Words.Condition(formula, h => Cells(h).FirstCell().Address.ToStringRelative()))
            .Fill.SetBackgroundColor(colour);
}
