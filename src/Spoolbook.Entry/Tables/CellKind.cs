namespace Spoolbook.Entry.Tables;

enum CellKind
{
    /// <summary>Words, or a number written as words in a text file.</summary>
    Words,

    /// <summary>A number in a workbook.</summary>
    Number,

    /// <summary>A date in a workbook, with or without a time of day.</summary>
    Date,

    /// <summary>Yes or no.</summary>
    Truth,

    /// <summary>The error value of a formula: <c>#REF!</c>.</summary>
    Fault,
}
