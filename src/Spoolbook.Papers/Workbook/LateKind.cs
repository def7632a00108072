namespace Spoolbook.Papers.Workbook;

/// <summary>The kinds of cell that look different in one column.</summary>
enum LateKind
{
    Words,

    /// <summary>Words that would be taken for a formula when somebody edits them.</summary>
    QuotedWords,

    Number,
    Moment,
    NumberByFormula,
    WordsByFormula,
}
