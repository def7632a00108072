namespace Spoolbook.Papers.Workbook;

/// <summary>A sheet that is one table, whatever its rows are of.</summary>
interface ITableSheet
{
    /// <summary>The table's name in formulas.</summary>
    string Table { get; }

    /// <summary>The same sheet with one column more before all others, which holds the same in every row.</summary>
    ITableSheet Behind(string head, CellFormat format, CellValue value);

    /// <summary>Writes it into the workbook.</summary>
    void Write(SheetWriter writer);
}
