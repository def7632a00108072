using System.Globalization;
using System.Text;
using Spoolbook.Shoot.Texts;

namespace Spoolbook.Printing;

/// <summary>Makes text from a user's YAML, and figures about it, safe for a terminal.</summary>
internal static class Plain
{
    const char Hidden = '\uFFFD';

    /// <summary>
    /// The text with a visible sign for every invisible character, one for one. A tab must not move the marker below
    /// it, and an escape sequence must not reach the terminal.
    /// </summary>
    public static string Text(string text)
    {
        var shown = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            shown.Append(
                c == '\t' ? ' '
                : IsHidden(c) ? Hidden
                : c
            );
        }

        return shown.ToString();
    }

    /// <summary>The text on one line, with a number in place of every character that a terminal would obey: <c>\u001B</c>.</summary>
    public static string Escaped(string text) => Text(TextCharacters.Escaped(text.Replace('\t', ' ')));

    /// <summary><c>1 roll</c>, <c>12 rolls</c></summary>
    public static string Count(int count, string what) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {what}{(count == 1 ? "" : "s")}");

    static bool IsHidden(char c) => char.IsControl(c) || char.GetUnicodeCategory(c) is UnicodeCategory.Format;
}
