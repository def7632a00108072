using ClosedXML.Excel;

namespace Spoolbook.Papers.Workbook;

/// <summary>The number formats of one production.</summary>
/// <param name="inMetres">Whether its lengths are numbers of metres, or words of feet and frames.</param>
sealed class CellFormats(bool inMetres)
{
    public string NumberFormat(CellFormat format) =>
        format switch
        {
            CellFormat.Words or CellFormat.LongWords => "@",
            CellFormat.Count => "0",
            CellFormat.Length => inMetres ? "#,##0.00;-#,##0.00;\"–\"" : "General",
            CellFormat.Frames => "#,##0",
            CellFormat.Seconds => "#,##0.0",
            CellFormat.Clock => "[m]:ss",
            CellFormat.Percent => "0.0%",
            CellFormat.ToOne => "0.0\" : 1\"",
            CellFormat.Plain => "General",
            CellFormat.Rate => "#,##0.00##",
            CellFormat.Money => "#,##0.00",
            CellFormat.Date => "yyyy-mm-dd",
            CellFormat.Moment => "yyyy-mm-dd hh:mm",
            _ => throw new ArgumentOutOfRangeException(nameof(format)),
        };

    public void Apply(IXLStyle style, CellFormat format)
    {
        var words = format is CellFormat.Words or CellFormat.LongWords;
        style.NumberFormat.Format = NumberFormat(format);
        style.Alignment.Horizontal = words ? XLAlignmentHorizontalValues.Left : XLAlignmentHorizontalValues.Right;
        style.Alignment.Indent = words ? 1 : 0;
        style.Alignment.Vertical = XLAlignmentVerticalValues.Top;
        style.Alignment.WrapText = format == CellFormat.LongWords;
    }
}
