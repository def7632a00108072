using System.Collections.Immutable;
using System.Globalization;
using Spoolbook.Papers.Typesetting.Setup;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Faults;

/// <summary>
/// Texts that do not fit on a can's label. Each is one finding, at its place in the production, however many cans it is
/// on.
/// </summary>
internal static class LabelFaults
{
    public static ImmutableArray<Finding> Find(Production production, ImmutableArray<(string Paper, PageWarning Warning)> told)
    {
        told = [.. told.Where(t => t.Warning.Kind == PageWarningKind.Shortened)];
        if (told.IsEmpty)
        {
            return [];
        }

        var written = WrittenTexts.Of(production);
        return
        [
            .. told.GroupBy(t => t.Warning.Text, StringComparer.Ordinal)
                .Select(same =>
                {
                    var fullest = same.MinBy(t => t.Warning.Letters);
                    return Report(fullest.Paper, fullest.Warning, PlaceOf(fullest.Warning, written));
                }),
        ];
    }

    /// <summary>Where the text is written, or the first of the lines that make it up; else the template's place.</summary>
    static Place PlaceOf(PageWarning warning, IReadOnlyList<Located<string>> written)
    {
        var text = LetterFaults.Fold(warning.Text);
        return written
            .Where(w => w.Value.Trim().Length > 0 && text.StartsWith(LetterFaults.Fold(w.Value), StringComparison.Ordinal))
            .OrderByDescending(w => w.Value.Length)
            .FirstOrDefault()
            ?.Place
            ?? new Place(warning.Place.File, warning.Place.Line, warning.Place.Column, 1);
    }

    static Finding Report(string paper, PageWarning warning, Place place) =>
        new(
            PaperChecks.DoesNotFit,
            Level.Warning,
            Sentence.Of(
                "paper/does-not-fit.message",
                ("paper", paper),
                ("room", warning.Letters),
                ("letters", new StringInfo(warning.Text).LengthInTextElements),
                ("text", warning.Before + warning.Near)
            ),
            place
        )
        {
            Advice = Sentence.Of("paper/does-not-fit.help"),
        };
}
