using System.Collections.Frozen;
using System.Text.RegularExpressions;

namespace Spoolbook.Reading.Trees;

/// <summary>
/// Texts that lack their quotes, on the line where the parser gave up. A bracket that seems open is in fact closed, behind
/// the sign that hides its end.
/// </summary>
static partial class TextSlips
{
    // Keys that take free text.
    static readonly FrozenSet<string> _freeWords = new[]
    {
        "note",
        "notes",
        "what",
        "where",
        "reason",
        "how",
        "title",
        "name",
        "role",
        "from",
        "care",
        "condition-out",
        "condition-back",
    }.ToFrozenSet(StringComparer.Ordinal);

    /// <summary>A text in single quotes with an apostrophe in it, <c>'Dog's ear'</c>, written right.</summary>
    /// <param name="at">Where the parser gave up: behind the apostrophe.</param>
    public static (int From, int To, string Written)? QuoteClosedEarly(string text, int at)
    {
        var line = LineAround(text, at);
        foreach (var match in InSingleQuotes().EnumerateMatches(text.AsSpan(line.From, line.To - line.From)))
        {
            var (from, to) = (line.From + match.Index, line.From + match.Index + match.Length);
            if (from < at && at <= to)
            {
                var inside = text[(from + 1)..(to - 1)];
                return inside.Contains('"', StringComparison.Ordinal)
                    ? null
                    : (from, to, $"\"{inside.Replace("''", "'", StringComparison.Ordinal)}\"");
            }
        }

        return null;
    }

    /// <summary>A text in brackets with a <c>#</c> after a blank: the rest of the line is a comment, the bracket's end too.</summary>
    /// <param name="at">Where the parser gave up: on a later line, or at the end of the file.</param>
    public static (int From, int To, string Written)? CommentInBrackets(string text, int open, int at)
    {
        var line = LineAround(text, open);
        if (at < line.To)
        {
            return null;
        }

        var right = text[open] == '{' ? '}' : ']';
        var match = BeforeComment().Match(text[open..line.To]);
        if (!match.Success || match.Groups["rest"].Value.LastIndexOf(right) is not (>= 0 and var close))
        {
            return null;
        }

        var value = match.Groups["text"];
        var rest = match.Groups["rest"].Value[..close];
        var comma = rest.IndexOf(", ", StringComparison.Ordinal);
        var whole = $"{value.Value} {(comma < 0 ? rest : rest[..comma])}";
        var from = open + match.Groups["rest"].Index;
        return whole.Contains('"', StringComparison.Ordinal) ? null : (from, line.To, $"\"{whole.Trim()}\"");
    }

    /// <summary>The key before the colon at which the parser gave up, where a comma is missing before the key.</summary>
    public static (int From, int To, string Written)? KeyBefore(string text, int colon, Func<string, bool> isKey)
    {
        if (colon >= text.Length || text[colon] != ':')
        {
            return null;
        }

        var from = colon;
        while (from > 0 && (char.IsAsciiLetterLower(text[from - 1]) || text[from - 1] == '-'))
        {
            from--;
        }

        // The first key of a line belongs to no bracket of the line above, and in a note any word can come before a colon.
        var key = text[from..colon];
        var before = text.AsSpan()[LineAround(text, from).From..from].Trim();
        var owner = before[(before.LastIndexOfAny(",{[") + 1)..].Trim();
        return isKey(key) && !before.IsEmpty && !_freeWords.Contains(owner[..Math.Max(0, owner.IndexOf(':'))].ToString())
            ? (from, colon, key)
            : null;
    }

    /// <summary>A text with a colon and a blank in it, <c>NB: do not cut</c>, in the quotes it needs; null where it is no text.</summary>
    /// <param name="colon">The colon at which the parser gave up.</param>
    public static string? ColonInText(string text, int colon, bool inBrackets)
    {
        var line = LineAround(text, colon);
        var from = inBrackets ? text.LastIndexOfAny([',', '{', '['], Math.Max(line.From, colon - 1)) : -1;
        var start = from < line.From ? line.From : from + 1;
        var after = text.AsSpan()[start..colon].IndexOf(": ");
        if (colon >= text.Length || text[colon] != ':' || after < 0)
        {
            return null;
        }

        var end = inBrackets ? text.AsSpan()[colon..line.To].IndexOfAny(",}]") : -1;
        var value = text[(start + after + 2)..(end < 0 ? line.To : colon + end)].Trim();
        return value.AsSpan().ContainsAny("\"'#{[") ? null : $"\"{value}\"";
    }

    static (int From, int To) LineAround(string text, int at)
    {
        at = Math.Clamp(at, 0, text.Length);
        var from = at;
        while (from > 0 && text[from - 1] is not ('\n' or '\r'))
        {
            from--;
        }

        var to = at;
        while (to < text.Length && text[to] is not ('\n' or '\r'))
        {
            to++;
        }

        return (from, to);
    }

    // From the first quote to the last one before a comma, a bracket or the end, with an apostrophe between letters.
    [GeneratedRegex(@"(?<=[:,\[{-] *)'[^'\n]*(?:\w'\w[^'\n]*)+'(?=\s*(?:[,}\]]|$))")]
    private static partial Regex InSingleQuotes();

    [GeneratedRegex(@"(?:^|[:,] +)(?<text>[^'""\[{,:#]*?) (?<rest>#.*)$", RegexOptions.ExplicitCapture)]
    private static partial Regex BeforeComment();
}
