using ClosedXML.Excel;

namespace Spoolbook.Papers.Workbook;

/// <summary>What people may write into the cells of a column, so that the formulas understand it.</summary>
/// <param name="Words">The words to choose from; empty where it is a whole number.</param>
/// <param name="Strict">Whether anything else is refused; else it is asked whether it is meant.</param>
sealed record Allowed(IReadOnlyList<string> Words, bool Strict)
{
    // The most that a list in a cell's own rule can hold.
    const int Most = 255;

    // Rows below the table that are minded already, so that whoever goes on writing there is helped too.
    const int RowsMore = 500;

    /// <summary>The least whole number; null where words are chosen.</summary>
    public int? Least { get; private init; }

    /// <summary>Nothing but these words.</summary>
    public static Allowed Only(IEnumerable<string> words) => new([.. words], Strict: true);

    /// <summary>These names, or another after a question; null where they do not go into a list.</summary>
    public static Allowed? Names(IEnumerable<string> names)
    {
        var words = names.Distinct(StringComparer.Ordinal).ToList();
        var fits = words.Count > 0 && words.Sum(w => w.Length + 1) <= Most && words.TrueForAll(w => w.Trim() == w && w.Length > 0 && w.IndexOfAny([',', '"', '=']) < 0);
        return fits ? new(words, Strict: false) : null;
    }

    /// <summary>A whole number from one on.</summary>
    public static Allowed From(int least) => new([], Strict: true) { Least = least };

    public void Apply(IXLWorksheet sheet, int column, int first, int last, string head)
    {
        var rule = sheet.Range(first, column, last + RowsMore, column).SetDataValidation();
        rule.IgnoreBlanks = true;
        if (Least is { } least)
        {
            rule.WholeNumber.EqualOrGreaterThan(least);
            rule.ErrorMessage = $"{head}: a whole number from {least} on.";
        }
        else
        {
            rule.List($"\"{string.Join(',', Words)}\"", inCellDropdown: true);
            rule.ErrorMessage = Strict ? $"{head} is one of: {string.Join(", ", Words)}." : $"{head} is none of those in the production's files. Keep it?";
        }

        rule.ErrorTitle = head;
        rule.ErrorStyle = Strict ? XLErrorStyle.Stop : XLErrorStyle.Warning;
        rule.ShowErrorMessage = true;
    }
}
