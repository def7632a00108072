using System.Globalization;
using System.Text.RegularExpressions;

namespace Spoolbook.Acceptance.Silent;

/// <summary>What a tired hand does to a value: each slip makes another plausible value of the same kind.</summary>
static partial class ValueSlips
{
    /// <summary>The slips that the value can suffer, with the file's text after each.</summary>
    /// <param name="others">Other values of the same key in the production, the next ones first.</param>
    public static IEnumerable<(string Slip, string Text)> Of(WrittenValue value, string text, IReadOnlyList<string> others)
    {
        if (Without(value, text) is { } shorter)
        {
            yield return ("deleted", shorter);
        }

        if (value.IsEntry)
        {
            yield return ("written twice", Twice(value, text));
            yield break;
        }

        var other = others.FirstOrDefault(o => o != value.Text);
        if (other is not null)
        {
            yield return ("another's", With(value, text, other));
        }

        foreach (var (slip, changed) in Changed(value.Text).DistinctBy(c => c.Text).Where(c => c.Text != value.Text && c.Text != other))
        {
            yield return (slip, With(value, text, changed));
        }
    }

    static IEnumerable<(string Slip, string Text)> Changed(string value)
    {
        if (DateOnly.TryParseExact(value.Split(' ')[0], "yyyy-MM-dd", out var date))
        {
            var rest = value[10..];
            yield return ("a year off", Day(date.AddYears(-1)) + rest);
            yield return ("a day off", Day(date.AddDays(1)) + rest);
            yield break;
        }

        if (Clock().Match(value) is { Success: true } clock)
        {
            var hour = Number(clock.Groups[1].Value);
            yield return ("ten hours off", $"{(hour + 10) % 24:00}:{clock.Groups[2].Value}");
            yield break;
        }

        switch (value)
        {
            case "yes" or "no":
                yield return ("the other answer", value == "yes" ? "no" : "yes");
                yield break;
            case "true" or "false":
                yield return ("the other answer", value == "true" ? "false" : "true");
                yield break;
        }

        // The first number of a length, a stop, a distance or a count; a name with a number in it is a name.
        if (Figure().Match(value) is { Success: true } figure)
        {
            var number = decimal.Parse(figure.Groups[1].Value, CultureInfo.InvariantCulture);
            var rest = value[figure.Groups[1].Length..];
            yield return ("ten times", (number * 10).ToString("0.####", CultureInfo.InvariantCulture) + rest);
            if (number >= 1)
            {
                yield return ("one less", (number - 1).ToString("0.####", CultureInfo.InvariantCulture) + rest);
            }

            if (figure.Groups[1].Value is [var first, var second] && first != second && char.IsAsciiDigit(first) && second != '0')
            {
                yield return ("figures turned round", $"{second}{first}{rest}");
            }
        }
    }

    static string With(WrittenValue value, string text, string changed) =>
        text[..value.From]
        + (text[value.From] is '"' or '\'' ? $"\"{changed.Replace("\"", "", StringComparison.Ordinal)}\"" : changed)
        + text[value.To..];

    // An entry of a block list is its lines; a value in braces takes its comma with it; any other is the rest of its line.
    static string? Without(WrittenValue value, string text)
    {
        var lineStart = text.LastIndexOf('\n', Math.Max(0, value.EntryFrom - 1)) + 1;
        var before = text[lineStart..value.EntryFrom];
        var to = value.IsEntry ? value.To : EndOf(value, text);
        while (value.IsEntry && to > value.From && char.IsWhiteSpace(text[to - 1]))
        {
            to--;
        }

        if (before.Trim() is "" or "-" && (to >= text.Length || text[to] == '\n'))
        {
            return before.Trim() == "-" && !value.IsEntry && IsFirstKey(value, text)
                ? null
                : text[..lineStart] + text[Math.Min(text.Length, to + 1)..];
        }

        var end = to;
        while (end < text.Length && text[end] == ' ')
        {
            end++;
        }

        if (end < text.Length && text[end] == ',')
        {
            end++;
            while (end < text.Length && text[end] is ' ' or '\n')
            {
                end++;
            }

            return text[..value.EntryFrom] + text[end..];
        }

        var head = text[..value.EntryFrom].TrimEnd();
        return head.EndsWith(',') ? head[..^1] + text[to..] : text[..value.EntryFrom] + text[to..];
    }

    // "- scene: 1" with more keys below it: without its first key it is another list.
    static bool IsFirstKey(WrittenValue value, string text) => text.AsSpan(value.EntryFrom, value.From - value.EntryFrom).Contains(':');

    static int EndOf(WrittenValue value, string text)
    {
        var to = value.To;
        var line = text.IndexOf('\n', to);
        var rest = text[to..(line < 0 ? text.Length : line)];
        return rest.TrimStart().StartsWith('#') || rest.Trim().Length == 0 ? to + rest.Length : to;
    }

    static string Twice(WrittenValue value, string text)
    {
        var lineStart = text.LastIndexOf('\n', Math.Max(0, value.EntryFrom - 1)) + 1;
        var to = text.IndexOf('\n', Math.Max(value.From, value.To - 1));
        to = to < 0 ? text.Length : to + 1;
        var lines = text[lineStart..to];
        return text[..to] + (lines.EndsWith('\n') ? "" : "\n") + lines + text[to..];
    }

    static string Day(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^(\d{1,2}):(\d\d)$")]
    private static partial Regex Clock();

    [GeneratedRegex(@"^(\d+(?:\.\d+)?)(?:$|[+/ ].*|[a-z%]{1,3}\b.*)", RegexOptions.Singleline)]
    private static partial Regex Figure();
}
