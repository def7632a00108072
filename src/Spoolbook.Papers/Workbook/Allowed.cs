using ClosedXML.Excel;

namespace Spoolbook.Papers.Workbook;

/// <summary>What may be typed into the cells of a column, so that the formulas can read it.</summary>
/// <param name="Words">The words to choose from; empty where it is a whole number.</param>
/// <param name="Strict">Whether anything else is refused; otherwise the program asks first.</param>
sealed record Allowed(IReadOnlyList<string> Words, bool Strict)
{
    // The longest title of a message.
    const int MostTitle = 32;

    // The longest list in a cell's own rule.
    const int Most = 255;

    /// <summary>The smallest whole number; null for a choice of words.</summary>
    public int? Least { get; private init; }

    /// <summary>Only these codes of the house, or their names in the workbook.</summary>
    public static Allowed Only(IEnumerable<string> codes) => new([.. codes], Strict: true);

    /// <summary>These names, or another after a question; null where they do not fit into a list.</summary>
    public static Allowed? Names(IEnumerable<string> names)
    {
        var words = names.Distinct(StringComparer.Ordinal).ToList();
        var fits =
            words.Count > 0
            && words.Sum(w => w.Length + 1) <= Most
            && words.TrueForAll(w => w.Trim() == w && w.Length > 0 && w.IndexOfAny([',', '"', '=']) < 0);
        return fits ? new(words, Strict: false) : null;
    }

    /// <summary>A whole number from a smallest one on.</summary>
    public static Allowed From(int least) => new([], Strict: true) { Least = least };

    /// <param name="head">The column's head in the workbook.</param>
    /// <param name="called">A code's name in the workbook.</param>
    public void Apply(TablePlace place, int column, string head, Func<string, string> called, WorkbookTerms say)
    {
        var rule = place.Sheet.Range(place.HeadRow + 1, column, place.Last + place.RowsMore, column).SetDataValidation();
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
