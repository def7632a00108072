using System.Text.RegularExpressions;
using Spoolbook.Papers.Faults;
using Spoolbook.Papers.Pages;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Texts;

namespace Spoolbook.Papers.Wording;

/// <summary>Finds what is wrong in a file of words, line by line.</summary>
static partial class WordsCheck
{
    // The house's own has some six hundred, and each that is unknown is compared with all of them.
    const int MostLines = 3_000;

    // The house's longest has some four hundred, and each stands on every page that asks for it.
    const int MostLetters = 2_000;

    // Lists of words that a date picks from.
    static readonly Dictionary<string, int> Lists = new(StringComparer.Ordinal) { ["months-short"] = 12, ["days-short"] = 7 };

    public static IEnumerable<Finding> Findings(TemplateText file, Translations english)
    {
        if (file.Refused is { } reason)
        {
            yield return Report(
                file,
                1,
                1,
                Level.Error,
                Sentence.Of("paper/words.message.refused", ("reason", reason)),
                Sentence.Of("paper/words.help.refused")
            );
            yield break;
        }

        var lines = file.Text.Split('\n');
        if (lines.Length > MostLines)
        {
            yield return Report(
                file,
                MostLines + 1,
                1,
                Level.Error,
                Sentence.Of("paper/words.message.too-many", ("n", lines.Length), ("most", MostLines)),
                Sentence.Of("paper/words.help.too-many")
            );
            yield break;
        }

        var known = english.Keys.ToList();
        var number = 0;
        foreach (var line in lines)
        {
            number++;
            var equals = line.IndexOf('=', StringComparison.Ordinal);
            if (line.Trim().Length == 0 || line.TrimStart().StartsWith('#'))
            {
                continue;
            }

            if (equals <= 0)
            {
                yield return Report(
                    file,
                    number,
                    1,
                    Level.Warning,
                    Sentence.Of("paper/words.message.no-key"),
                    Sentence.Of("paper/words.help.no-key")
                );
                continue;
            }

            if (TextCharacters.FirstRefused(line) is { } stray)
            {
                yield return Report(
                    file,
                    number,
                    TextCharacters.IndexOfRefused(line) + 1,
                    Level.Error,
                    Sentence.Of(
                        "paper/words.message.character",
                        ("number", TextCharacters.Number(stray)),
                        ("name", TextCharacters.Name(stray))
                    ),
                    Sentence.Of("paper/words.help.character")
                );
                continue;
            }

            if (line.Length > MostLetters)
            {
                yield return Report(
                    file,
                    number,
                    1,
                    Level.Error,
                    Sentence.Of("paper/words.message.too-long", ("n", line.Length), ("most", MostLetters)),
                    Sentence.Of("paper/words.help.too-long")
                );
                continue;
            }

            var (key, text) = (line[..equals].Trim(), line[(equals + 1)..].Trim());
            var column = line.Length - line.TrimStart().Length + 1;
            if (!english.Has(key))
            {
                var near = Likeness.Nearest(key, known);
                yield return Report(
                    file,
                    number,
                    column,
                    Level.Warning,
                    Sentence.Of("paper/words.message.unknown", ("key", key)),
                    near is null ? Sentence.Of("paper/words.help.unknown") : Sentence.Of("common.did-you-mean", ("near", near))
                );
                continue;
            }

            if (Lists.TryGetValue(key, out var wanted) && text.Split(' ').Length != wanted)
            {
                yield return Report(
                    file,
                    number,
                    column,
                    Level.Error,
                    Sentence.Of("paper/words.message.list", ("key", key), ("n", text.Split(' ').Length), ("wanted", wanted)),
                    Sentence.Of("paper/words.help.list")
                );
                continue;
            }

            var given = Places(english[key]);
            foreach (var place in Places(text).Except(given))
            {
                yield return Report(
                    file,
                    number,
                    equals + 1 + line[(equals + 1)..].IndexOf(place, StringComparison.Ordinal) + 1,
                    Level.Warning,
                    Sentence.Of("paper/words.message.place", ("place", place), ("key", key)),
                    given.Count == 0
                        ? Sentence.Of("paper/words.help.no-place")
                        : Sentence.Of("paper/words.help.place", ("places", string.Join(", ", given)))
                );
            }
        }
    }

    static HashSet<string> Places(string text) => [.. Place().Matches(text).Select(m => m.Value)];

    static Finding Report(TemplateText file, int line, int column, Level level, Sentence message, Sentence help) =>
        new(PaperChecks.Words, level, message, new Place(file.File, line, column, 1)) { Advice = help };

    [GeneratedRegex(@"\{[^{}]*\}", RegexOptions.CultureInvariant)]
    private static partial Regex Place();
}
