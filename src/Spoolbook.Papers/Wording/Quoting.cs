using Spoolbook.Papers.Pages;

namespace Spoolbook.Papers.Wording;

/// <summary>Sets what a finding quotes: text between backticks is from a file, or goes in one.</summary>
static class Quoting
{
    public static Markup Mark(string text)
    {
        var parts = text.Split('`');

        // A single backtick is the user's own.
        return parts.Length % 2 == 0
            ? new Markup(Escaping.Escape(text))
            : new Markup(
                string.Concat(parts.Select((part, i) => i % 2 == 0 ? Escaping.Escape(part) : $"<code>{Escaping.Escape(part)}</code>"))
            );
    }
}
