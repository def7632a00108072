using System.Globalization;
using System.Text;
using Spoolbook.Shoot.Texts;

namespace Spoolbook.Printing;

/// <summary>Text out of somebody's YAML, and figures about it, made fit for a terminal.</summary>
internal static class Plain
{
    const char Hidden = '\uFFFD';

    /// <summary>
    /// A line of a file with a sign in place of every character that shows nothing, one for one: a tab or an escape
    /// sequence must neither move the marker below it nor reach the terminal.
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
    public static string Escaped(string text) => TextCharacters.Escaped(text.Replace('\t', ' '));

    /// <summary><c>1 roll</c>, <c>12 rolls</c></summary>
    public static string Count(int count, string what) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {what}{(count == 1 ? "" : "s")}");

    static bool IsHidden(char c) => char.IsControl(c) || char.GetUnicodeCategory(c) is UnicodeCategory.Format;
}
