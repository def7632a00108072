using System.Collections.Immutable;
using Spoolbook.Papers.Faults;
using Spoolbook.Papers.Pages;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Wording;

/// <summary>
/// The words for one production: the house's English, overridden by the language, each overridden by a department's own
/// lines. What a language lacks is in English, with a finding.
/// </summary>
/// <param name="Language">The language that the papers end up in, as in BCP 47.</param>
/// <param name="Findings">What is wrong with the files; an error keeps papers from being written.</param>
internal sealed record PaperLanguage(Translations Words, string Language, ImmutableArray<Finding> Findings)
{
    const string English = "en";
    const int MostNamed = 5;

    /// <summary>The words of every language of the house, English first.</summary>
    public static ImmutableArray<Translations> House { get; } =
    [
        .. from tag in HouseTemplates.Names.Select(TagOf).OfType<string>()
        orderby !IsEnglish(tag), tag
        select Translations.Parse(new HouseTemplates().Find(FileOf(English))!.Text, new HouseTemplates().Find(FileOf(tag))!.Text),
    ];

    public static PaperLanguage For(Production production, ITemplateSource templates)
    {
        var house = new HouseTemplates();
        var english = house.Find(FileOf(English)) ?? throw new MissingWordException("language");
        var known = Translations.Parse(english.Text);
        var findings = new List<Finding>();
        var basis = Texts(English);
        var language = production.Language;
        var translated = IsEnglish(language) ? [] : Texts(language);
        if (translated.Count == 0 && !IsEnglish(language))
        {
            findings.Add(PaperFaults.NoLanguage(language));
            language = English;
        }
        else if (translated.Count > 0)
        {
            var missing = known.Keys.Except(Translations.Parse([.. translated]).Keys).ToList();
            if (missing.Count > 0)
            {
                findings.Add(
                    PaperFaults.Untranslated(
                        language,
                        missing.Count,
                        string.Join(", ", missing.Take(MostNamed)) + (missing.Count > MostNamed ? ", …" : "")
                    )
                );
            }
        }

        return new PaperLanguage(Translations.Parse([english.Text, .. basis, .. translated]), language, [.. findings]);

        List<string> Texts(string tag)
        {
            // A department's file has only the lines that it changes; the others are the house's. For de-AT, the language is de.
            var names = new[] { tag, tag.Split('-')[0] }.Distinct(StringComparer.OrdinalIgnoreCase).Reverse().Select(FileOf);
            var files =
                from name in names
                from source in new ITemplateSource[] { house, templates }
                let file = source.Find(name)
                where file is not null
                select file;
            var sound = new List<string>();
            foreach (var file in files.Distinct())
            {
                // The house's own are checked by its tests.
                var wrong = file == house.Find(Path.GetFileName(file.File)) ? [] : WordsCheck.Findings(file, known).ToList();
                findings.AddRange(wrong);
                if (!wrong.Any(f => f.Level == Level.Error))
                {
                    sound.Add(file.Text);
                }
            }

            return sound;
        }
    }

    static bool IsEnglish(string tag) => tag.Split('-')[0].Equals(English, StringComparison.OrdinalIgnoreCase);

    static string? TagOf(string file) => file.Split('.') is ["words", var tag, "txt"] ? tag : null;

    static string FileOf(string tag) => $"words.{tag}.txt";
}
