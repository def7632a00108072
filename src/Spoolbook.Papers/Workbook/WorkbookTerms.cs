using System.Buffers;
using System.Text;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Workbook;

/// <summary>
/// A workbook's names of sheets, heads and codes, and its other texts, in the production's language. Sheets and
/// formulas are written in the house's terms; this turns them into the words of the file. A word for one table alone,
/// <c>book.head.stock.shot</c>, overrides the one for all, <c>book.head.shot</c>.
/// </summary>
sealed class WorkbookTerms(Translations words)
{
    // Codes that other papers write too.
    static readonly Dictionary<string, string> Shared = new(StringComparer.Ordinal)
    {
        ["G"] = "mark-good",
        ["H"] = "mark-hold",
        ["NG"] = "mark-ng",
        ["T"] = "mark-test",
        ["W"] = "letter-waste",
        ["SE"] = "letter-short-end",
        ["yes"] = "yes",
        ["no"] = "no",
        ["open"] = "open",
        ["error"] = "level-error",
        ["warning"] = "level-warning",
        ["note"] = "level-note",
    };

    static readonly SearchValues<char> NotInSheets = SearchValues.Create("[]:*?/\\'");
    static readonly SearchValues<char> NotInCodes = SearchValues.Create(",;\"*?~<>=");

    // The end of a head of the frames of another column.
    static readonly string Frames = WorkbookUnits.FramesOf("");

    readonly Dictionary<(string? Table, string Formula), string> _formulas = [];

    /// <summary>The keys of the words file that were looked up.</summary>
    public HashSet<string> Asked { get; } = new(StringComparer.Ordinal);

    /// <summary>What writes values as on the other papers.</summary>
    public PaperFormat FormatFor(Production production) => new(production, words);

    /// <summary>A text, by its key without <c>book.</c></summary>
    public string this[string key] => Word("book." + key);

    /// <summary>The same, with its <c>{names}</c> filled in.</summary>
    public string Fill(string key, params ReadOnlySpan<(string Name, string Value)> values)
    {
        Asked.Add("book." + key);
        return words.Fill("book." + key, values);
    }

    /// <summary>A sheet's name.</summary>
    /// <exception cref="UnfitWordException">No sheet can have that name.</exception>
    public string Sheet(string name)
    {
        var key = SheetKey(name);
        var called = Word(key);
        return called.Length is 0 or > 31 ? throw new UnfitWordException(key, Sentence.Of("paper/words.value.sheet-length"))
            : called.AsSpan().ContainsAny(NotInSheets) ? throw new UnfitWordException(key, Sentence.Of("paper/words.value.sheet-letters"))
            : called;
    }

    /// <summary>The key of a sheet's name.</summary>
    public static string SheetKey(string name) => "book.sheet." + Slug(name);

    /// <summary>The head of a column.</summary>
    /// <exception cref="UnfitWordException">Not every spreadsheet program can find it.</exception>
    public string Head(string table, string head)
    {
        // LibreOffice 7.4 finds no head with an apostrophe, however a formula writes it.
        var key = HeadKey(table, head);
        var called = IsOfFrames(key, head) ? Fill("frames-of", ("head", Head(table, head[..^Frames.Length]))) : Word(key);
        return called.Length == 0 ? throw new UnfitWordException(key, Sentence.Of("paper/words.value.no-head"))
            : called.Contains('\'', StringComparison.Ordinal)
                ? throw new UnfitWordException(key, Sentence.Of("paper/words.value.apostrophe"))
            : called;
    }

    // A head that is said with the words of the column whose frames it has.
    bool IsOfFrames(string key, string head) => head.EndsWith(Frames, StringComparison.Ordinal) && !words.Has(key);

    /// <summary>The key of a column's head.</summary>
    public string HeadKey(string table, string head) => Own($"book.head.{Slug(table)}.", "book.head.", head);

    /// <summary>The word in cells for one of the house's codes.</summary>
    /// <param name="table">The table; null in formulas, where a code has the same word for every table.</param>
    /// <exception cref="UnfitWordException">A list of choices or a formula would read it as something else.</exception>
    public string Code(string? table, string code)
    {
        var key = CodeKey(table, code);
        var word = Word(key);
        return word.AsSpan().ContainsAny(NotInCodes)
            ? throw new UnfitWordException(key, Sentence.Of("paper/words.value.code-letters"))
            : word;
    }

    /// <summary>The key of the word in cells for one of the house's codes.</summary>
    public string CodeKey(string? table, string code) =>
        Shared.TryGetValue(code, out var shared) ? shared : Own(table is null ? null : $"book.code.{Slug(table)}.", "book.code.", code);

    /// <summary>A formula as in the file.</summary>
    /// <param name="table">Its table; null outside of one.</param>
    public string Formula(string formula, string? table = null)
    {
        if (!_formulas.TryGetValue((table, formula), out var spelled))
        {
            _formulas[(table, formula)] = spelled = FormulaText.Spell(formula, table, Head, Said);
        }

        return spelled;
    }

    /// <summary>
    /// The formula of a conditional format. No program reads column names there, so cells of the same row are given by
    /// address.
    /// </summary>
    /// <param name="cell">The first cell of a column, by its head in the house's terms.</param>
    public string Condition(string formula, Func<string, string> cell) => FormulaText.Spell(formula, column => cell(column.Head), Said);

    // Quoted signs that only compare or match patterns are no codes.
    string Said(string said) => said.Any(char.IsLetter) ? Code(null, said) : said;

    string Own(string? own, string general, string term)
    {
        var slug = Slug(term);
        return own is not null && words.Has(own + slug) ? own + slug : general + slug;
    }

    /// <summary>The text of a whole key, whether or not it fits.</summary>
    public string Word(string key)
    {
        Asked.Add(key);
        return words[key];
    }

    static string Slug(string term)
    {
        var slug = new StringBuilder(term.Length);
        foreach (var (c, i) in term.Select((c, i) => (c, i)))
        {
            // ShortEnds is short-ends; EI is ei.
            slug.Append(char.IsUpper(c) && i > 0 && char.IsLower(term[i - 1]) ? "-" : "")
                .Append(c == ' ' ? '-' : char.ToLowerInvariant(c));
        }

        return slug.ToString();
    }
}
