using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting.Setup;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Faults;

/// <summary>Faults in printing, as findings.</summary>
internal static class PaperFaults
{
    public static Finding Template(TemplateFault fault) =>
        new(
            PaperChecks.Template,
            Level.Error,
            Sentence.Of("paper/template.message", ("reason", fault.Description)),
            new Place(fault.File, fault.Line, fault.Column, 1)
        )
        {
            Advice = Sentence.Of("paper/template.help"),
        };

    public static Finding Logo(Logo logo, Place place, Sentence reason) =>
        new(PaperChecks.Logo, Level.Error, Sentence.Of("paper/logo.message", ("file", logo.File.Value), ("reason", reason)), place)
        {
            Advice = Sentence.Of(logo.IsSvg ? "paper/logo.help.svg" : "paper/logo.help.png"),
        };

    public static Finding MissingWord(string key, string language) =>
        new(
            PaperChecks.Template,
            Level.Error,
            Sentence.Of("paper/template.message.missing-word", ("language", language), ("key", key)),
            new Place($"words.{language}.txt", 1, 1, 1)
        )
        {
            Advice = Sentence.Of("paper/template.help.missing-word", ("key", key)),
        };

    public static Finding UnfitWord(string key, Sentence reason, string language) =>
        new(
            PaperChecks.Words,
            Level.Error,
            Sentence.Of("paper/words.message.unfit", ("key", key), ("language", language), ("reason", reason)),
            new Place($"words.{language}.txt", 1, 1, 1)
        )
        {
            Advice = Sentence.Of("paper/words.help.unfit"),
        };

    public static Finding NoLanguage(string language) =>
        new(
            PaperChecks.Language,
            Level.Warning,
            Sentence.Of("paper/language.message.none", ("language", language)),
            new Place("production.yaml", 1, 1, 1)
        )
        {
            Advice = Sentence.Of("paper/language.help.none", ("language", language)),
        };

    public static Finding Untranslated(string language, int count, string which) =>
        new(
            PaperChecks.Language,
            Level.Warning,
            Sentence.Of("paper/language.message.lacks", ("language", language), ("n", count), ("which", which)),
            new Place("production.yaml", 1, 1, 1)
        )
        {
            Advice = Sentence.Of("paper/language.help.lacks", ("language", language)),
        };

    public static Finding NoSuchLabel(Located<int> start, int most) =>
        new(
            PaperChecks.NoSuchLabel,
            Level.Warning,
            Sentence.Of("paper/no-such-label.message", ("start", start.Value), ("most", most)),
            start.Place
        )
        {
            Advice = Sentence.Of("paper/no-such-label.help", ("most", most)),
        };

    public static Finding Overflow(string paper, PageWarning warning) =>
        new(
            PaperChecks.DoesNotFit,
            Level.Warning,
            Sentence.Of("paper/does-not-fit.message.cut-off", ("paper", paper), ("near", warning.Near)),
            new Place(warning.Place.File, warning.Place.Line, warning.Place.Column, 1)
        )
        {
            Advice = Sentence.Of("paper/does-not-fit.help.cut-off"),
        };
}
