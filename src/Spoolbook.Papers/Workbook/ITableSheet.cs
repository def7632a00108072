using ClosedXML.Excel;

namespace Spoolbook.Papers.Workbook;

/// <summary>A table of a sheet, of any kind of row.</summary>
interface ITableSheet
{
    /// <summary>The table's name in formulas.</summary>
    string Table { get; }

    /// <summary>Its heading in the house's terms.</summary>
    string Name { get; }

    /// <summary>Its columns that are printed.</summary>
    int Printed { get; }

    /// <summary>Its rows, at least one.</summary>
    int Length { get; }

    /// <summary>The same table with another column before the others, which has the same value in every row.</summary>
    ITableSheet Behind(string head, CellFormat format, CellValue value);

    /// <summary>How wide each of its columns wants to be.</summary>
    IEnumerable<double> Widths(WorkbookTerms say);

    /// <summary>Writes it into a sheet.</summary>
    /// <param name="top">The row of its heading.</param>
    /// <param name="rowsMore">Rows below it for which what may be typed is checked too.</param>
    /// <param name="isAlone">Whether it is the only one there, so that its columns are the sheet's.</param>
    void Write(SheetWriter writer, IXLWorksheet sheet, int top, int rowsMore, bool isAlone);
}
