using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting.Fonts;
using Spoolbook.Papers.Typesetting.Setup;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Faults;

/// <summary>
/// Texts that papers cannot show as written. Each is one finding, at its place in the production, however many papers
/// it is on. A text from no file of the production is flagged at the template that prints it.
/// </summary>
internal static class LetterFaults
{
    // As much as a reader takes in, of one finding and of one run.
    const int MostLetters = 6,
        MostPapers = 3,
        MostTexts = 20;

    public static ImmutableArray<Finding> Find(Production production, ImmutableArray<(string Paper, PageWarning Warning)> told)
    {
        told = [.. told.Where(t => t.Warning.Kind is PageWarningKind.MissingGlyph or PageWarningKind.RightToLeft)];
        if (told.IsEmpty)
        {
            return [];
        }

        var written = WrittenTexts
            .Of(production)
            .Select(text => new Text(text.Value, [text.Place], TextCleaner.Clean(text.Value)))
            .Where(text => text.IsTold)
            .GroupBy(text => text.Folded, StringComparer.Ordinal)
            .Select(same =>
                same.First() with
                {
                    Places =
                    [
                        .. same.SelectMany(text => text.Places)
                            .OrderBy(p => p.File, StringComparer.Ordinal)
                            .ThenBy(p => p.Line)
                            .ThenBy(p => p.Column),
                    ],
                }
            )
            .OrderByDescending(text => text.Folded.Length)
            .ThenBy(text => text.Folded, StringComparer.Ordinal)
            .ToList();

        var papers = new Dictionary<Text, SortedSet<string>>();
        foreach (var (paper, warning) in told)
        {
            foreach (var text in Sources(warning, written))
            {
                if (!papers.TryGetValue(text, out var names))
                {
                    papers[text] = names = new SortedSet<string>(StringComparer.Ordinal);
                }

                names.Add(paper);
            }
        }
        var all = papers
            .OrderBy(p => p.Key.Places[0].File, StringComparer.Ordinal)
            .ThenBy(p => p.Key.Places[0].Line)
            .ThenBy(p => p.Key.Places[0].Column)
            .ToList();
        var findings = all.Take(MostTexts).Select(entry => Report(entry.Key, [.. entry.Value]));
        return [.. findings, .. all.Count > MostTexts ? [More([.. all.Skip(MostTexts).Select(entry => entry.Key)])] : (Finding[])[]];
    }

    /// <summary>The texts of the production that make up a printed text; the printed text itself where there are none.</summary>
    static List<Text> Sources(PageWarning warning, List<Text> written)
    {
        var rest = Fold(warning.Text);
        var sources = new List<Text>();
        foreach (var text in written.Where(text => rest.Contains(text.Folded, StringComparison.Ordinal)))
        {
            // Longest first: a name in a remark is flagged at the remark.
            if (!rest.Contains(text.Folded, StringComparison.Ordinal))
            {
                continue;
            }

            sources.Add(text);
            rest = rest.Replace(text.Folded, " ", StringComparison.Ordinal);
        }
        foreach (var word in rest.Split(' ').Where(word => TextCleaner.Clean(word).Missing.Length > 0))
        {
            // A text that was shortened, or printed in part.
            if (written.FirstOrDefault(text => text.Folded.Contains(word, StringComparison.Ordinal)) is { } holder)
            {
                if (!sources.Contains(holder))
                {
                    sources.Add(holder);
                }
            }
            else
            {
                var place = new Place(warning.Place.File, warning.Place.Line, warning.Place.Column, 1);
                return [.. sources, new Text(warning.Text, [place], TextCleaner.Clean(warning.Text))];
            }
        }
        return sources;
    }

    static Finding Report(Text text, ImmutableArray<string> papers) =>
        text.Clean.Missing is { Length: > 0 } missing
            ? new Finding(
                PaperChecks.MissingGlyph,
                Level.Warning,
                Sentence.Of(
                    missing.Length == 1 ? "paper/missing-glyph.message.one" : "paper/missing-glyph.message.many",
                    ("letters", Letters(missing)),
                    ("papers", Papers(papers))
                ),
                text.Places[0]
            )
            {
                Others = [.. text.Places.Skip(1).Select(place => new Related(place, Sentence.Of("common.text-again")))],
                Advice = Sentence.Of(missing.Any(IsLetter) ? "paper/missing-glyph.help.letters" : "paper/missing-glyph.help.signs"),
            }
            : new Finding(
                PaperChecks.RightToLeft,
                Level.Warning,
                Sentence.Of(
                    papers.Length == 1 ? "paper/right-to-left.message.one" : "paper/right-to-left.message.many",
                    ("papers", Papers(papers))
                ),
                text.Places[0]
            )
            {
                Others = [.. text.Places.Skip(1).Select(place => new Related(place, Sentence.Of("common.text-again")))],
                Advice = Sentence.Of("paper/right-to-left.help"),
            };

    static Finding More(ImmutableArray<Text> texts) =>
        new(
            PaperChecks.MissingGlyph,
            Level.Warning,
            Sentence.Of("paper/missing-glyph.message.more", ("n", texts.Length)),
            texts[0].Places[0]
        )
        {
            Figures =
            [
                .. texts
                    .GroupBy(text => text.Places[0].File, StringComparer.Ordinal)
                    .Select(file => new Figure(Sentence.Plain(file.Key), file.Count())),
            ],
            Advice = Sentence.Of("paper/missing-glyph.help.more"),
        };

    static Sentence Letters(ImmutableArray<string> missing)
    {
        var shown = missing.Take(MostLetters).Select(Named).ToList();
        return Listed(shown, missing.Length - shown.Count, "paper/missing-glyph.value.more-letters");
    }

    /// <summary>The letter as written, without its joiners, and its Unicode numbers.</summary>
    static string Named(string letter)
    {
        var characters = letter.EnumerateRunes().Take(MostLetters).ToList();
        return $"{string.Concat(characters.Where(c => Rune.GetUnicodeCategory(c) != UnicodeCategory.Format))} "
            + $"({string.Join(' ', characters.Select(c => "U+" + c.Value.ToString("X4", CultureInfo.InvariantCulture)))})";
    }

    static Sentence Papers(ImmutableArray<string> papers) =>
        Listed([.. papers.Take(MostPapers)], papers.Length - MostPapers, "common.more-papers");

    static Sentence Listed(List<string> shown, int more, string andMore) =>
        more > 0 ? Sentence.Of(andMore, ("shown", string.Join(", ", shown)), ("n", more))
        : shown.Count == 1 ? Sentence.Plain(shown[0])
        : Sentence.Of("list.and", ("before", string.Join(", ", shown.SkipLast(1))), ("last", shown[^1]));

    static bool IsLetter(string letter) => Rune.TryGetRuneAt(letter, 0, out var first) && Rune.IsLetter(first);

    /// <summary>For comparing texts: line ends become blanks, and several blanks one.</summary>
    internal static string Fold(string text) =>
        string.Join(' ', text.Replace(Escaping.LineBreak, ' ').Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    sealed record Text(string Value, ImmutableArray<Place> Places, DrawableText Clean)
    {
        public string Folded { get; } = Fold(Value);

        public bool IsTold => Clean.Missing.Length > 0 || Clean.Turns;

        // Texts are equal by their words, wherever they are.
        public bool Equals(Text? other) => other is not null && other.Folded == Folded && other.Places[0] == Places[0];

        public override int GetHashCode() => Folded.GetHashCode(StringComparison.Ordinal);
    }
}
