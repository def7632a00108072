using System.Text;

namespace Spoolbook.Entry.Lines;

/// <summary>Splits a line into its words.</summary>
static class LineWords
{
    /// <summary>The first word at or after a place; null at the end of the line.</summary>
    public static LineWord? Next(string line, int at)
    {
        while (at < line.Length && (char.IsWhiteSpace(line[at]) || line[at] is ',' or ';'))
        {
            at++;
        }

        return at == line.Length ? null
            : line[at] == '"' ? Quoted(line, at)
            : Plain(line, at);
    }

    /// <summary>A text in quotation marks, fit for one line.</summary>
    public static string Quote(string text)
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
                    _ => c.ToString(),
                }
            );
        }

        return quoted.Append('"').ToString();
    }

    static LineWord Plain(string line, int start)
    {
        var end = start;
        while (end < line.Length && !char.IsWhiteSpace(line[end]))
        {
            end++;
        }

        var text = line[start..end];
        return text.EndsWith(':')
            ? new LineWord(text[..^1], start, end) { HasColon = true }
            : new LineWord(text.TrimEnd(',', ';'), start, end);
    }

    static LineWord Quoted(string line, int start)
    {
        var text = new StringBuilder();
        var at = start + 1;
        while (at < line.Length && line[at] != '"')
        {
            if (line[at] == '\\' && at + 1 < line.Length)
            {
                at++;
                text.Append(
                    line[at] switch
                    {
                        'n' => '\n',
                        'r' => '\r',
                        't' => '\t',
                        _ => line[at],
                    }
                );
            }
            else
            {
                text.Append(line[at]);
            }

            at++;
        }

        var isClosed = at < line.Length;
        var end = isClosed ? at + 1 : at;
        var colon = end < line.Length && line[end] == ':';
        if (end < line.Length && (line[end] is ',' or ';' || colon))
        {
            end++;
        }

        var isFree = end == line.Length || char.IsWhiteSpace(line[end]);
        while (!isFree && end < line.Length && !char.IsWhiteSpace(line[end]))
        {
            end++;
        }

        return new LineWord(text.ToString(), start, end)
        {
            IsQuoted = true,
            HasColon = colon && isFree,
            IsBroken = !isClosed || !isFree,
        };
    }
}
