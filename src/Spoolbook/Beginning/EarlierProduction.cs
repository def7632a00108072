using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Spoolbook.Reading.Beginning;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Beginning;

/// <summary>An earlier production, for what the next one takes over from it.</summary>
internal sealed class EarlierProduction
{
    static readonly string[] _taken =
    [
        "gauge",
        "project-at",
        "paper",
        "labels",
        "units",
        "language",
        "meter-for",
        "school",
        "director",
        "cinematographer",
        "learners",
        "people",
        "lab",
        "rates",
        "rules",
        "loan",
        "bodies",
        "lenses",
        "filters",
        "meters",
        "motors",
        "items",
    ];

    readonly ImmutableDictionary<string, EarlierKey> _keys;

    EarlierProduction(Production production, ImmutableDictionary<string, EarlierKey> keys) => (Production, _keys) = (production, keys);

    public Production Production { get; }

    /// <summary>What is taken over of a production that was read.</summary>
    public static EarlierProduction Of(IProductionFiles files, Production production)
    {
        var keys =
            from name in files.Names
            where !name.Contains('/', StringComparison.Ordinal)
            let text = files.Open(name).Text
            where text is not null
            from key in EarlierText.KeysOf(name, text, _taken)
            select key;
        return new EarlierProduction(production, keys.DistinctBy(k => k.Name).ToImmutableDictionary(k => k.Name, StringComparer.Ordinal));
    }

    public bool Has(string key) => _keys.ContainsKey(key);

    /// <summary>The lines of some keys, in this order, with the new title and code in place of the old.</summary>
    public string Text(NewAnswers answers, params IEnumerable<string> keys) => string.Concat(keys.Select(key => Text(answers, key, [])));

    /// <summary>The lines of a list with more items at its end.</summary>
    public string Text(NewAnswers answers, string key, IReadOnlyCollection<string> more)
    {
        if (!_keys.TryGetValue(key, out var earlier))
        {
            return "";
        }

        var text = Renamed(earlier.Text, Production.Title.Value, answers.Title);
        text = key == "lab" && answers.ProjectAt is not null ? WithoutRate(text) : text;
        return (earlier with { Text = Renamed(text, Production.Code.Value, answers.Code) }).With(more).Text;
    }

    // Files that were ordered for another speed run too slow or too fast.
    static string WithoutRate(string lab) =>
        Regex.Replace(Regex.Replace(lab, "(?m)^( +)(rate: .*)$", "$1# $2  # last time"), "([{,]) ?rate: [^,}]*,? ?", "$1 ");

    // The address of the office has the title on it, the files that the lab delivers the code. A name that needs quotes is left to a
    // person.
    static string Renamed(string text, string old, string now) =>
        old.Length < 3 || YamlWords.Of($"x{now}x") != $"x{now}x" || now.AsSpan().ContainsAny("'\"\\#:")
            ? text
            : Regex.Replace(
                text,
                $@"(?<![\p{{L}}\p{{N}}]){Regex.Escape(old)}(?![\p{{L}}\p{{N}}])",
                now.Replace("$", "$$", StringComparison.Ordinal)
            );
}
