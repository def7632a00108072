using Spoolbook.Papers.Pages;

namespace Spoolbook.Papers.Wording;

/// <summary>Sets what a finding quotes: what it has between backticks is what stands, or is to stand, in a file.</summary>
static class Quoting
{
    public static Markup Mark(string text)
    {
        var parts = text.Split('`');

        // One backtick without its fellow was somebody's own.
        return parts.Length % 2 == 0
            ? new Markup(Escaping.Escape(text))
            : new Markup(
                string.Concat(parts.Select((part, i) => i % 2 == 0 ? Escaping.Escape(part) : $"<code>{Escaping.Escape(part)}</code>"))
            );
    }
}
