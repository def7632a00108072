namespace Spoolbook.Papers.Workbook;

/// <summary>A sheet that is one table, of any kind of row.</summary>
interface ITableSheet
{
    /// <summary>The table's name in formulas.</summary>
    string Table { get; }

    /// <summary>The same sheet with another column before the others, which has the same value in every row.</summary>
    ITableSheet Behind(string head, CellFormat format, CellValue value);

    /// <summary>Writes it into the workbook.</summary>
    void Write(SheetWriter writer);
}
