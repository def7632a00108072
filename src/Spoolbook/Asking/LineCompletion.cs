using System.Globalization;
using Spoolbook.Entry.Lines;

namespace Spoolbook.Asking;

/// <summary>The words that a line may go on with.</summary>
internal static class LineCompletion
{
    /// <summary>The words that can take the place of the last one of a text, in order.</summary>
    public static IReadOnlyList<string> Of(string text, LineContext context)
    {
        var words = text.Split(' ');
        var (word, isFirst) = (words[^1], words.SkipLast(1).All(w => w.Length == 0 || w.EndsWith(':') || w.StartsWith('#')));
        var candidates = isFirst ? Slates(context).Concat(Verbs).Concat(Rolls(context)) : Names(words, context);
        return [.. candidates.Where(c => c.StartsWith(word, StringComparison.OrdinalIgnoreCase)).Distinct(StringComparer.Ordinal)];
    }

    // With a hyphen it is the same verb.
    static IEnumerable<string> Verbs => LineGrammar.Verbs.Where(v => !v.Contains('-', StringComparison.Ordinal));

    // The next take of each shot, the newest shot first.
    static IEnumerable<string> Slates(LineContext context) =>
        context
            .Shots.Where(s => s.Scene.Length > 0)
            .OrderByDescending(s => s.Last > 0)
            .Select(s => string.Create(CultureInfo.InvariantCulture, $"{s.Scene}{s.Shot}/{s.Last + 1}"));

    static IEnumerable<string> Rolls(LineContext context) => context.Open.Count() > 1 ? context.Open.Select(r => r.Name + ":") : [];

    static IEnumerable<string> Names(string[] words, LineContext context) =>
        words.FirstOrDefault(w => w.Length > 0) is "amend" or "strike"
            ? context.Open.SelectMany(r => r.Slates).Reverse()
            :
            [
                .. context.Lenses,
                .. context.Filters,
                .. context.Meters,
                .. context.Motors,
                .. context.Bodies.Select(b => b.Body),
                .. context.Lots.Select(l => l + "/"),
                .. context.People,
            ];
}
