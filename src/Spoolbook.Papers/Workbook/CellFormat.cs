using ClosedXML.Excel;

namespace Spoolbook.Papers.Workbook;

/// <summary>How a column is written.</summary>
enum CellFormat
{
    /// <summary>Words, from the left.</summary>
    Words,

    /// <summary>Words too long for one line.</summary>
    LongWords,

    /// <summary>A whole number.</summary>
    Count,

    /// <summary>Film, in the unit of the production.</summary>
    Length,

    /// <summary>Frames.</summary>
    Frames,

    /// <summary>Seconds with one decimal.</summary>
    Seconds,

    /// <summary>Minutes and seconds; the cell holds a part of a day.</summary>
    Clock,

    /// <summary>A part of a whole.</summary>
    Percent,

    /// <summary>The n of n:1.</summary>
    ToOne,

    /// <summary>A number with as many decimals as it has.</summary>
    Plain,

    /// <summary>A price of one, with cents and up to two decimals more.</summary>
    Rate,

    /// <summary>Money in cents.</summary>
    Money,

    /// <summary>A date.</summary>
    Date,

    /// <summary>A date and the time of day.</summary>
    Moment,
}

/// <summary>The number formats of one production.</summary>
/// <param name="lengthFormat">The number format of its lengths.</param>
sealed class CellFormats(string lengthFormat)
{
    public string NumberFormat(CellFormat format) => format switch
    {
        CellFormat.Words or CellFormat.LongWords => "@",
        CellFormat.Count => "0",
        CellFormat.Length => lengthFormat,
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
