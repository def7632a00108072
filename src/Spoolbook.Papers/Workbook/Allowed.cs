using ClosedXML.Excel;

namespace Spoolbook.Papers.Workbook;

/// <summary>What people may write into the cells of a column, so that the formulas understand it.</summary>
/// <param name="Words">The words to choose from; empty where it is a whole number.</param>
/// <param name="Strict">Whether anything else is refused; else it is asked whether it is meant.</param>
sealed record Allowed(IReadOnlyList<string> Words, bool Strict)
{
    // The most that a title over a message can hold.
    const int MostTitle = 32;

    // The most that a list in a cell's own rule can hold.
    const int Most = 255;

    // Rows below the table that are minded already, so that whoever goes on writing there is helped too.
    const int RowsMore = 500;

    /// <summary>The least whole number; null where words are chosen.</summary>
    public int? Least { get; private init; }

    /// <summary>Nothing but these codes of the house's, or what the workbook calls them.</summary>
    public static Allowed Only(IEnumerable<string> codes) => new([.. codes], Strict: true);

    /// <summary>These names, or another after a question; null where they do not go into a list.</summary>
    public static Allowed? Names(IEnumerable<string> names)
    {
        var words = names.Distinct(StringComparer.Ordinal).ToList();
        var fits =
            words.Count > 0
            && words.Sum(w => w.Length + 1) <= Most
            && words.TrueForAll(w => w.Trim() == w && w.Length > 0 && w.IndexOfAny([',', '"', '=']) < 0);
        return fits ? new(words, Strict: false) : null;
    }

    /// <summary>A whole number from one on.</summary>
    public static Allowed From(int least) => new([], Strict: true) { Least = least };

    /// <param name="head">What the column is called in the workbook.</param>
    /// <param name="called">What a code is called in it.</param>
    public void Apply(IXLWorksheet sheet, int column, int first, int last, string head, Func<string, string> called, WorkbookWords say)
    {
        var rule = sheet.Range(first, column, last + RowsMore, column).SetDataValidation();
        rule.IgnoreBlanks = true;
        if (Least is { } least)
        {
            rule.WholeNumber.EqualOrGreaterThan(least);
            rule.ErrorMessage = say.Fill(
                "input.whole-number",
                ("head", head),
                ("least", least.ToString(System.Globalization.CultureInfo.InvariantCulture))
            );
        }
        else
        {
            List<string> words = [.. Strict ? Words.Select(called) : Words];
            rule.List($"\"{string.Join(',', words)}\"", inCellDropdown: true);
            rule.ErrorMessage = Strict
                ? say.Fill("input.one-of", ("head", head), ("words", string.Join(", ", words)))
                : say.Fill("input.not-ours", ("head", head));
        }

        rule.ErrorTitle = head.Length > MostTitle ? head[..MostTitle] : head;
        rule.ErrorStyle = Strict ? XLErrorStyle.Stop : XLErrorStyle.Warning;
        rule.ShowErrorMessage = true;
    }
}
