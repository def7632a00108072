namespace Spoolbook.Papers.Workbook;

/// <summary>The format of a column.</summary>
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

    /// <summary>Minutes and seconds; the cell has a fraction of a day.</summary>
    Clock,

    /// <summary>A part of a whole.</summary>
    Percent,

    /// <summary>The n of n:1.</summary>
    ToOne,

    /// <summary>A number with all its decimals.</summary>
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
