namespace Spoolbook.Entry.Tables;

/// <summary>What kind of thing stands in a cell.</summary>
enum CellKind
{
    /// <summary>Words, or a number written as words in a text file.</summary>
    Words,

    /// <summary>A number of a workbook.</summary>
    Number,

    /// <summary>A date of a workbook, with or without a time of day.</summary>
    Date,

    /// <summary>Yes or no.</summary>
    Truth,

    /// <summary>What a formula gave that could not be worked out: <c>#REF!</c>.</summary>
    Fault,
}
