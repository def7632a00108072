using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Trees;

/// <summary>The parser's complaints in words that say what to do.</summary>
static class SyntaxWords
{
    const string Tab = " tab ";
    const string SecondKey = "invalid mapping";
    const string UnclosedMap = "expected ',' or '}'";

    static readonly (string Sign, string Message, string Help)[] Complaints =
    [
        (Tab, "A tab stands where only spaces can.", "Indent with spaces, two for each step."),
        (SecondKey, "A second `key:` stands inside a value, or a line is indented too far.", "Give each key its own line with the same indentation, or put quotes round a value that holds a colon and a space: `note: \"like this: quoted\"`."),
        ("apping values are not allowed", "A `key:` stands where none can.", "Give each key its own line with the same indentation as its neighbours."),
        ("expected key", "This line is not a `key: value` like those above it.", "Indent it like its neighbours; a list item begins with `- `."),
        ("expected '-' indicator", "This line stands in a list and does not begin with `- `.", "Begin it with `- `, or indent it like the key that it belongs to."),
        (UnclosedMap, "A bracket `{` before this is not closed.", "Close it with `}`, and put a comma between its keys."),
        ("expected ',' or ']'", "A bracket `[` before this is not closed.", "Close it with `]`, and put a comma between its items."),
        ("quoted scalar, found ", "A quote is opened here and never closed.", "Close it with the same quote."),
        ("unknown escape character", "A backslash in double quotes stands before a letter that means nothing.", "Use single quotes, or write two backslashes."),
        ("cannot start any token", "A value cannot begin with this character.", "Put quotes round the value."),
        ("expected node content", "A value is missing here, or a bracket is not closed.", "Write the value, or close the bracket."),
        ("expected ':'", "A colon is missing after this key.", "Write `key: value`, with a space after the colon."),
        ("simple key", "A colon is missing after this key.", "Write `key: value`, with a space after the colon."),
    ];

    /// <summary>The complaint as a finding.</summary>
    public static (string Message, string Help, Place Place) For(string complaint, SourceFile source, int from, int to)
    {
        var text = source.Text;
        if (complaint.Contains(Tab, StringComparison.Ordinal) && IndentingTab(text, from) is { } tab)
        {
            return Told(Tab, source.At(tab, tab + 1));
        }

        // Between brackets the parser misses a comma where a person sees a remark with a colon in it.
        var sign = complaint.Contains(UnclosedMap, StringComparison.Ordinal) && from < text.Length && text[from] == ':' ? SecondKey : complaint;
        return Told(sign, PlaceOf(source, from, to));
    }

    static (string Message, string Help, Place Place) Told(string complaint, Place place)
    {
        foreach (var (sign, message, help) in Complaints)
        {
            if (complaint.Contains(sign, StringComparison.Ordinal))
            {
                return (message, help, place);
            }
        }

        return ("From here on the text cannot be read as YAML.", "Compare the line with one that works: indentation, the space after the colon, quotes and brackets.", place);
    }

    // The parser points at the beginning of what it was reading, which can be lines before the tab.
    static int? IndentingTab(string text, int from)
    {
        var indented = true;
        for (var at = text.LastIndexOf('\n', Math.Max(0, Math.Min(from, text.Length) - 1)) + 1; at < text.Length; at++)
        {
            if (indented && text[at] == '\t')
            {
                return at;
            }

            indented = text[at] == '\n' || (indented && text[at] == ' ');
        }

        return null;
    }

    /// <summary>The complaint's characters; the last ones before it where it is about the end of the file or an empty line.</summary>
    public static Place PlaceOf(SourceFile source, int from, int to)
    {
        var text = source.Text;
        from = Math.Clamp(from, 0, text.Length);
        while (from > 0 && (from == text.Length || text[from] is '\n' or '\r'))
        {
            from--;
            to = from + 1;
        }

        return source.At(from, Math.Max(to, from + 1));
    }
}
