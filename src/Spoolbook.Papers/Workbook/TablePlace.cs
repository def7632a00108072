using ClosedXML.Excel;

namespace Spoolbook.Papers.Workbook;

/// <summary>Where a table is.</summary>
/// <param name="Last">Its last row.</param>
/// <param name="RowsMore">Rows below it that may still be typed into.</param>
/// <param name="IsAlone">Whether no other table is on its sheet.</param>
sealed record TablePlace(IXLWorksheet Sheet, int HeadRow, int Last, int RowsMore, bool IsAlone);
