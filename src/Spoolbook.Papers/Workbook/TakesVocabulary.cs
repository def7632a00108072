using System.Collections.Immutable;
using Spoolbook.Papers.Ledger;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Workbook;

/// <summary>
/// How the sheet of takes names things, for whoever reads it back: in the words of the production first, then in
/// every language that the house has, since a table may have been begun before the language was written.
/// </summary>
/// <param name="Sheets">What the sheet is called.</param>
/// <param name="Heads">The heads of its columns: in the house's terms, and as they stand in a workbook.</param>
/// <param name="Marks">How it writes what is said of a take.</param>
public sealed record TakesVocabulary(
    ImmutableArray<string> Sheets,
    ImmutableArray<(string House, string Called)> Heads,
    ImmutableArray<(Mark Mark, string Code)> Marks
)
{
    const string Sheet = "Takes";

    /// <summary>The vocabulary for a production.</summary>
    /// <param name="templates">Where its words come from.</param>
    public static TakesVocabulary Of(Production production, ITemplateSource templates)
    {
        var own = LanguageWords.For(production, templates).Words;
        Translations[] languages = [own, .. LanguageWords.House];
        var heads = TakesSheet.Columns(production, new WorkbookUnits(production), _ => false).Select(c => c.Head).ToList();
        var marks = Enum.GetValues<Mark>();
        return new(
            Each<string>(languages, say => [say.Word(WorkbookWords.SheetKey(Sheet))]),
            Each(languages, say => heads.Select(h => (h, say.Word(say.HeadKey(Sheet, h))))),
            Each(languages, say => marks.Select(m => (m, say.Word(say.CodeKey(Sheet, Codes.Of(m))))))
        );
    }

    static ImmutableArray<T> Each<T>(Translations[] languages, Func<WorkbookWords, IEnumerable<T>> said) =>
        [.. languages.Select(words => new WorkbookWords(words)).SelectMany(said).Distinct()];
}
