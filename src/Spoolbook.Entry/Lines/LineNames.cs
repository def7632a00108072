using System.Collections.Immutable;
using Spoolbook.Film;

namespace Spoolbook.Entry.Lines;

/// <summary>The names that the production knows for a key.</summary>
static class LineNames
{
    /// <summary>The names for a key; empty where there are none, and any text is a name.</summary>
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

    /// <summary>The marks of the shutter of the body that a roll is in.</summary>
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

    /// <summary>The name that a word is, as the production writes it; null where it is none.</summary>
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

    /// <summary>Whether a text is the part of the shutter that is open, as it is said: two figures of one digit, or per cent.</summary>
    /// <remarks>A split stop looks like a part: 8/11. It has two digits, or a point.</remarks>
    public static bool IsPart(string text) =>
        text.Length > 1 && text[^1] == '%'
            ? Measure.Part(text).Succeeded
            : text is [>= '1' and <= '9' and var part, '/', >= '1' and <= '9' and var whole] && part < whole;
}
