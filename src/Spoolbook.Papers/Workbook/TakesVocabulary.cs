using System.Collections.Immutable;
using Spoolbook.Papers.Ledger;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Workbook;

/// <summary>
/// The names in the sheet of takes, for reading it back: in the production's words first, then in every language of the
/// house, since a table may be older than the production's language setting.
/// </summary>
/// <param name="Sheets">The names of the sheet.</param>
/// <param name="Heads">The heads of its columns: in the house's terms, and as in a workbook.</param>
/// <param name="Marks">Its codes for a take's mark.</param>
public sealed record TakesVocabulary(
    ImmutableArray<string> Sheets,
    ImmutableArray<(string House, string Called)> Heads,
    ImmutableArray<(Mark Mark, string Code)> Marks
)
{
    const string Sheet = "Takes";

    /// <summary>The vocabulary for a production.</summary>
    /// <param name="templates">The source of its words.</param>
    public static TakesVocabulary Of(Production production, ITemplateSource templates)
    {
        var own = PaperLanguage.For(production, templates).Words;
        Translations[] languages = [own, .. PaperLanguage.House];
        var heads = TakesSheet
            .Columns(production, new WorkbookUnits(production), new WorkbookTerms(own), _ => false)
            .Select(c => c.Head)
            .ToList();
        var marks = Enum.GetValues<Mark>();
        return new(
            Each<string>(languages, say => [say.Word(WorkbookTerms.SheetKey(Sheet))]),
            Each(languages, say => heads.Select(h => (h, say.Word(say.HeadKey(Sheet, h))))),
            Each(languages, say => marks.Select(m => (m, say.Word(say.CodeKey(Sheet, Codes.Of(m))))))
        );
    }

    static ImmutableArray<T> Each<T>(Translations[] languages, Func<WorkbookTerms, IEnumerable<T>> said) =>
        [.. languages.Select(words => new WorkbookTerms(words)).SelectMany(said).Distinct()];
}
