using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Trees;

/// <summary>The parser's complaints as advice, at the characters to change.</summary>
static class SyntaxFaults
{
    static readonly (string Sign, string Message, string Help)[] Complaints =
    [
        ("invalid mapping", "sheet/not-yaml.message.second-key", "sheet/not-yaml.help.second-key"),
        ("apping values are not allowed", "sheet/not-yaml.message.key-in-value", "sheet/not-yaml.help.key-in-value"),
        ("expected key", "sheet/not-yaml.message.no-key", "sheet/not-yaml.help.no-key"),
        ("expected '-' indicator", "sheet/not-yaml.message.not-in-list", "sheet/not-yaml.help.not-in-list"),
        ("unknown escape character", "sheet/not-yaml.message.backslash", "sheet/not-yaml.help.backslash"),
        ("cannot start any token", "sheet/not-yaml.message.first-character", "sheet/not-yaml.help.first-character"),
        ("anchor or alias", "sheet/not-yaml.message.ampersand", "sheet/not-yaml.help.ampersand"),
        ("scanning a tag", "sheet/not-yaml.message.tag", "sheet/not-yaml.help.tag"),
        ("surrogates", "sheet/not-yaml.message.half-character", "sheet/not-yaml.help.half-character"),
        ("expected node content", "sheet/not-yaml.message.no-value-in-brackets", "sheet/not-yaml.help.no-value-in-brackets"),
        ("expected ':'", "sheet/not-yaml.message.no-colon", "sheet/not-yaml.help.no-colon"),
        ("simple key", "sheet/not-yaml.message.no-colon", "sheet/not-yaml.help.no-colon"),
    ];

    /// <param name="bracket">Where the innermost open bracket is, if there is one.</param>
    /// <param name="isKey">Whether a word is a key of the format.</param>
    public static TreeFault For(SourceFile source, string complaint, int from, int to, int? bracket, Func<string, bool> isKey)
    {
        if (TabAt(source.Text, complaint, from) is { } tab)
        {
            return Fault(source, Sentence.Of("sheet/not-yaml.message.tab"), Sentence.Of("sheet/not-yaml.help.tab"), tab, tab + 1);
        }

        if (complaint.Contains("quoted scalar", StringComparison.Ordinal) && (Mentions("wrong indentation") || Mentions("end of stream")))
        {
            return Fault(source, Sentence.Of("sheet/not-yaml.message.quote"), Sentence.Of("sheet/not-yaml.help.quote"), from, from + 1);
        }

        if (TextSlips.QuoteClosedEarly(source.Text, from) is { } closed)
        {
            return Fault(
                source,
                Sentence.Of("sheet/not-yaml.message.apostrophe"),
                Sentence.Of("sheet/not-yaml.help.written", ("written", closed.Written)),
                closed.From,
                closed.To
            );
        }

        if (bracket is { } opened && Mentions("expected ','") && TextSlips.CommentInBrackets(source.Text, opened, from) is { } cut)
        {
            return Fault(
                source,
                Sentence.Of("sheet/not-yaml.message.comment-in-brackets"),
                Sentence.Of("sheet/not-yaml.help.written", ("written", cut.Written)),
                cut.From,
                cut.To
            );
        }

        if (bracket is { } && Mentions("expected ','") && TextSlips.KeyBefore(source.Text, from, isKey) is { } key)
        {
            return Fault(
                source,
                Sentence.Of("sheet/not-yaml.message.no-comma", ("key", key.Written)),
                Sentence.Of("sheet/not-yaml.help.no-comma", ("key", key.Written)),
                key.From,
                key.To
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
                var written = message == "sheet/not-yaml.message.second-key" ? Quoted(source, from, inBrackets: false) : null;
                return Fault(source, Sentence.Of(message), written ?? Sentence.Of(help), from, to);
            }
        }

        return Fault(source, Sentence.Of("sheet/not-yaml.message"), Sentence.Of("sheet/not-yaml.help"), from, to);

        bool Mentions(string sign) => complaint.Contains(sign, StringComparison.Ordinal);
    }

    static Sentence? Quoted(SourceFile source, int colon, bool inBrackets) =>
        TextSlips.ColonInText(source.Text, colon, inBrackets) is { } written
            ? Sentence.Of("sheet/not-yaml.help.written", ("written", written))
            : null;

    static TreeFault ColonInText(SourceFile source, int at) =>
        Fault(
            source,
            Sentence.Of("sheet/not-yaml.message.colon-in-brackets"),
            Quoted(source, at, inBrackets: true) ?? Sentence.Of("sheet/not-yaml.help.colon-in-brackets"),
            at,
            at + 1
        );

    static TreeFault OpenBracket(SourceFile source, int open)
    {
        var (left, right) = source.Text[open] == '{' ? ("{", "}") : ("[", "]");
        return Fault(
            source,
            Sentence.Of("sheet/not-yaml.message.bracket", ("left", left), ("right", right)),
            Sentence.Of("sheet/not-yaml.help.bracket", ("right", right)),
            open,
            open + 1
        );
    }

    /// <summary>The tab that the parser complains about: it points anywhere before it.</summary>
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

    static TreeFault Fault(SourceFile source, Sentence message, Sentence help, int from, int to) =>
        new(SheetChecks.NotYaml, message, PlaceOf(source, from, to), help);

    /// <summary>The characters themselves; at the end of a line or of the file, the last ones before it.</summary>
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
