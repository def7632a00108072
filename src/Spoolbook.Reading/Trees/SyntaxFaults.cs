using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Trees;

/// <summary>The parser's complaints in words that say what to do, at the characters that somebody would change.</summary>
static class SyntaxFaults
{
    static readonly (string Sign, string Message, string Help)[] Complaints =
    [
        (
            "invalid mapping",
            "A second `key:` stands inside a value, or a line is indented too far.",
            "Give each key its own line with the same indentation, or put quotes round a value that holds a colon and a space: `note: "
                + "\"like this: quoted\"`."
        ),
        (
            "apping values are not allowed",
            "A `key:` stands where none can.",
            "Give each key its own line with the same indentation as its neighbours."
        ),
        (
            "expected key",
            "This is not a `key: value` like its neighbours.",
            "Write the key, a colon, a space and the value, indented like its neighbours; an item of a list begins with `- `."
        ),
        (
            "expected '-' indicator",
            "This line stands in a list and does not begin with `- ` where its neighbours do.",
            "Begin it with `- `, indented like its neighbours, or indent it like the key that it belongs to."
        ),
        (
            "unknown escape character",
            "A backslash in double quotes stands before a letter that means nothing.",
            "Use single quotes, or write two backslashes."
        ),
        ("cannot start any token", "A value cannot begin with this character.", "Put quotes round the value."),
        (
            "anchor or alias",
            "A value cannot begin with `&` or `*`, which are for repeating something by a name.",
            "Put quotes round the value."
        ),
        ("scanning a tag", "A value cannot begin with `!`.", "Put quotes round the value."),
        ("surrogates", "An escape in quotes stands for half a character.", "Write the character itself."),
        ("expected node content", "A value is missing here.", "Write the value, or take out the bracket or comma before it."),
        ("expected ':'", "A colon is missing after this key.", "Write `key: value`, with a space after the colon."),
        ("simple key", "A colon is missing after this key.", "Write `key: value`, with a space after the colon."),
    ];

    /// <param name="bracket">Where the innermost bracket that is still open stands, if one is.</param>
    public static TreeFault For(SourceFile source, string complaint, int from, int to, int? bracket)
    {
        if (TabAt(source.Text, complaint, from) is { } tab)
        {
            return Fault(source, "A tab stands where only spaces can.", "Indent with spaces, two for each step.", tab, tab + 1);
        }

        if (complaint.Contains("quoted scalar", StringComparison.Ordinal) && (Mentions("wrong indentation") || Mentions("end of stream")))
        {
            return Fault(
                source,
                "A quote is opened here and never closed.",
                "Close it with the same quote at the end of the text.",
                from,
                from + 1
            );
        }

        if (bracket is { } open && (complaint.Length == 0 || Mentions("expected ','")))
        {
            return Mentions("expected ','") && from < source.Text.Length && source.Text[from] == ':'
                ? ColonInText(source, from)
                : OpenBracket(source, open);
        }

        foreach (var (sign, message, help) in Complaints)
        {
            if (Mentions(sign))
            {
                return Fault(source, message, help, from, to);
            }
        }

        return Fault(
            source,
            "From here on the text cannot be read as YAML.",
            "Compare the line with one that works: indentation, the space after the colon, quotes and brackets.",
            from,
            to
        );

        bool Mentions(string sign) => complaint.Contains(sign, StringComparison.Ordinal);
    }

    static TreeFault ColonInText(SourceFile source, int at) =>
        Fault(
            source,
            "A colon stands inside a text between brackets.",
            "Put quotes round the text: `note: \"like this: quoted\"`.",
            at,
            at + 1
        );

    static TreeFault OpenBracket(SourceFile source, int open)
    {
        var (left, right) = source.Text[open] == '{' ? ("{", "}") : ("[", "]");
        return Fault(
            source,
            $"The bracket `{left}` is opened here and not closed with `{right}`, or something between the two is not set off by a comma.",
            $"Write `{right}` after the last of what belongs in it, and commas between the parts.",
            open,
            open + 1
        );
    }

    /// <summary>The tab that a complaint about tabs is about: the parser points anywhere before it.</summary>
    static int? TabAt(string text, string complaint, int from)
    {
        if (!complaint.Contains("tab", StringComparison.Ordinal))
        {
            return null;
        }

        var lineBegins = true;
        for (var i = from; i < text.Length; i++)
        {
            if (text[i] == '\t' && lineBegins)
            {
                return i;
            }

            lineBegins = text[i] is '\n' or '\r' || (lineBegins && text[i] is ' ' or '-');
        }

        var any = text.IndexOf('\t', Math.Min(from, text.Length));
        return any < 0 ? null : any;
    }

    static TreeFault Fault(SourceFile source, string message, string help, int from, int to) =>
        new(SheetChecks.NotYaml, message, PlaceOf(source, from, to), help);

    /// <summary>The characters themselves; the last ones before them where they are the end of the file or of a line.</summary>
    static Place PlaceOf(SourceFile source, int from, int to)
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
