using System.Collections.Immutable;
using Spoolbook.Film;

namespace Spoolbook.Entry.Lines;

static class LineNames
{
    /// <summary>The names that the production knows for a key; empty where it knows none, and then any text is a name.</summary>
    public static ImmutableArray<string> Of(LineVerb verb, string key, RollSoFar? roll, LineContext context) =>
        key switch
        {
            "lens" when verb is LineVerb.Take or LineVerb.Amend => context.Lenses,
            "filter" => context.Filters,
            "meter" => context.Meters,
            "motor" => context.Motors,
            "by" => context.People,
            "body" => [.. context.Bodies.Select(b => b.Body)],
            "lot" => context.Lots,
            "short-end-of" => [.. context.Rolls.Select(r => r.Name)],
            "shutter" when verb is LineVerb.Take or LineVerb.Amend => MarksOf(roll, context),
            _ => [],
        };

    /// <summary>The marks on the shutter of the body that a roll is in.</summary>
    public static ImmutableArray<string> MarksOf(RollSoFar? roll, LineContext context)
    {
        var body = roll?.Body ?? context.TheOnlyBody;
        foreach (var marked in context.Bodies)
        {
            if (marked.Body == body)
            {
                return marked.Marks;
            }
        }

        return [];
    }

    /// <summary>The name meant by a word, as the production writes it; null where it means none.</summary>
    public static string? Find(string word, ImmutableArray<string> names)
    {
        string? near = null;
        var several = false;
        foreach (var name in names)
        {
            if (name == word)
            {
                return name;
            }

            if (name.Equals(word, StringComparison.OrdinalIgnoreCase))
            {
                several = near is not null;
                near = name;
            }
        }

        return several ? null : near;
    }

    /// <summary>Whether a text is the open part of the shutter: two figures of one digit each, or per cent.</summary>
    /// <remarks>A split stop looks much the same, but has two digits or a point: 8/11.</remarks>
    public static bool IsPart(string text) =>
        text.Length > 1 && text[^1] == '%'
            ? Measure.Part(text).Succeeded
            : text is [>= '1' and <= '9' and var part, '/', >= '1' and <= '9' and var whole] && part < whole;
}
