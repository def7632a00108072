using System.Text;
using Spoolbook.Shoot.Texts;

namespace Spoolbook.Papers.Pages;

/// <summary>Turns values into XHTML. Nothing else does.</summary>
static class Escaping
{
    /// <summary>A line break within a value: drawn as one on paper, a br element on the web page.</summary>
    public const char LineBreak = '\u2028';

    public const char Replacement = '\uFFFD';

    /// <summary>
    /// Text for between tags or inside quotes. Line ends become U+2028, and characters that XML does not allow become
    /// U+FFFD.
    /// </summary>
    public static string Escape(string value)
    {
        var text = new StringBuilder(value.Length + 16);
        for (var i = 0; i < value.Length; i++)
        {
            var c = value[i];
            if (char.IsHighSurrogate(c) && i + 1 < value.Length && char.IsLowSurrogate(value[i + 1]))
            {
                text.Append(c).Append(value[++i]);
            }
            else if (c == '\r' && i + 1 < value.Length && value[i + 1] == '\n')
            {
                // The line feed that follows makes the break.
            }
            else
            {
                Append(text, c);
            }
        }
        return text.ToString();
    }

    static void Append(StringBuilder text, char c)
    {
        switch (c)
        {
            case '&':
                text.Append("&amp;");
                break;
            case '<':
                text.Append("&lt;");
                break;
            case '>':
                text.Append("&gt;");
                break;
            case '"':
                text.Append("&quot;");
                break;
            case '\'':
                text.Append("&#39;");
                break;
            case '\n' or '\r' or '\u0085' or '\u2028' or '\u2029':
                text.Append(LineBreak);
                break;
            case '\t':
                text.Append(' ');
                break;
            default:
                text.Append(TextCharacters.IsAllowed(c) ? c : Replacement);
                break;
        }
    }
}
