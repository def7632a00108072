using System.Text;
using Spoolbook.Fuzz.Mutations;
using Spoolbook.Papers;

namespace Spoolbook.Fuzz.Targets;

/// <summary>A department's own words of a language, through every paper and the workbook.</summary>
internal sealed class WordsTarget : ITarget
{
    static readonly CheckedProduction _shoot = Pipeline
        .Run(SmallShoot.With(SmallShoot.Text.Replace("language: en", "language: de", StringComparison.Ordinal)))
        .Found;

    public string Name => "words";

    public IReadOnlyList<MutationKind> Grammar => [.. LineKinds.All, .. WordsKinds.All];

    public IEnumerable<string> Run(byte[] input)
    {
        using var reader = new StreamReader(new MemoryStream(input), Encoding.UTF8);
        var templates = OwnTemplates.Over(("words.de.txt", reader.ReadToEnd()));
        var printed = PaperPrinter.Print(_shoot.Books!, _shoot.Findings, [], new PrintOptions(Printing.Made, templates));
        return printed.Faults.Select(f => f.Check + " " + string.Join(' ', f.Message.Split(' ').Where(w => w.All(char.IsLetter)).Take(5))).Distinct();
    }
}
