using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using YamlDotNet.Core;

namespace Spoolbook.Reading.Editing;

/// <summary>Values as YAML writes them, safe between brackets as well as on a line.</summary>
static class YamlQuoting
{
    const string Openers = "-?:,[]{}#&*!|>'\"%@`";

    /// <summary>The values of a key: one alone, or a list in brackets.</summary>
    public static string Quote(ImmutableArray<string> values, ScalarStyle like = ScalarStyle.Any) =>
        values.Length == 1 ? Quote(values[0], like) : $"[{string.Join(", ", values.Select(v => Quote(v)))}]";

    /// <param name="like">The quotes of the value it replaces; without any, quotes only where the text needs them.</param>
    public static string Quote(string text, ScalarStyle like = ScalarStyle.Any)
    {
        var oneLine = !text.Any(c => char.IsControl(c) || c is '\u2028' or '\u2029' or '\uFEFF');
        return like == ScalarStyle.SingleQuoted && oneLine ? $"'{text.Replace("'", "''", StringComparison.Ordinal)}'"
            : like == ScalarStyle.DoubleQuoted || !oneLine || NeedsQuotes(text) ? Quoted(text)
            : text;
    }

    // Stricter than the standard, so that a person reading the file has no doubt either.
    static bool NeedsQuotes(string text) =>
        text.Length == 0
        || text is "~" or "null" or "Null" or "NULL" or "---" or "..." or "<<"
        || char.IsWhiteSpace(text[0])
        || char.IsWhiteSpace(text[^1])
        || (Openers.Contains(text[0], StringComparison.Ordinal) && !IsNegativeNumber(text))
        || text[^1] == ':'
        || text.Contains(": ", StringComparison.Ordinal)
        || text.Contains(" #", StringComparison.Ordinal)
        || text.AsSpan().ContainsAny(",[]{}");

    static bool IsNegativeNumber(string text) => text.Length > 1 && text[0] == '-' && char.IsAsciiDigit(text[1]);

    static string Quoted(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (var c in text)
        {
            quoted.Append(
                c switch
                {
                    '"' => "\\\"",
                    '\\' => "\\\\",
                    '\n' => "\\n",
                    '\r' => "\\r",
                    '\t' => "\\t",
                    _ when char.IsControl(c) || c is '\u2028' or '\u2029' or '\uFEFF' => string.Create(
                        CultureInfo.InvariantCulture,
                        $"\\u{(int)c:X4}"
                    ),
                    _ => c.ToString(),
                }
            );
        }

        return quoted.Append('"').ToString();
    }
}
