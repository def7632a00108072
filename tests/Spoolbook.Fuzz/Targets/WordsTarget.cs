using System.Text;
using Spoolbook.Fuzz.Mutations;
using Spoolbook.Papers.Ledger;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Wording;
using Spoolbook.Papers.Workbook;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Fuzz.Targets;

/// <summary>A department's own words of a language: read, checked and printed; in the workbook too where an input asks for it.</summary>
internal sealed class WordsTarget : ITarget
{
    // A workbook takes a hundred times as long as a page.
    const int Workbooks = 40;

    static readonly CheckedProduction _shoot = Pipeline
        .Run(SmallShoot.With(SmallShoot.Text.Replace("language: en", "language: de", StringComparison.Ordinal)))
        .Found;

    static readonly string _style = new HouseTemplates().Find("style.css")!.Text;

    public string Name => "words";

    public IReadOnlyList<MutationKind> Grammar => [.. LineKinds.All, .. WordsKinds.All];

    public IEnumerable<string> Run(byte[] input)
    {
        using var reader = new StreamReader(new MemoryStream(input), Encoding.UTF8);
        var templates = OwnTemplates.Over(("words.de.txt", reader.ReadToEnd()));
        var language = PaperLanguage.For(_shoot.Books!.Production, templates);
        var said = language.Findings.Select(f =>
            f.Check + " " + string.Join(' ', f.Message.Split(' ').Where(w => w.All(char.IsLetter)).Take(5))
        );
        if (language.Findings.Any(f => f.Level == Level.Error))
        {
            return said.Distinct();
        }

        try
        {
            return [.. said.Concat(Print(language, templates, input)).Distinct()];
        }
        catch (MissingWordException)
        {
            return ["a word is missing"];
        }
        catch (UnfitWordException unfit)
        {
            return ["unfit " + unfit.Reason.Split(' ')[0]];
        }
    }

    static IEnumerable<string> Print(PaperLanguage language, ITemplateSource templates, byte[] input)
    {
        var press = new PagePress(_shoot, language.Words, language.Language);
        var sum = input.Aggregate(0, (s, b) => ((s * 31) + b) % 1_000_003);
        if (sum % Workbooks == 0)
        {
            _ = FootageWorkbook.Make(new LedgerSource(_shoot.Books!, [], [], new DateOnly(2026, 10, 6)), language.Words);
        }

        // The words of a workbook are checked before a cell is written.
        _ = TakesVocabulary.Of(_shoot.Books!.Production, templates);
        return press.Print(press.Jobs[sum % press.Jobs.Count], templates, _style);
    }
}
