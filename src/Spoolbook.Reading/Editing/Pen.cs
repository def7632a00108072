using System.Collections.Immutable;
using System.Text;
using Spoolbook.Reading.Files;
using Spoolbook.Reading.Trees;
using YamlDotNet.Core;

namespace Spoolbook.Reading.Editing;

/// <summary>Collects what to write where, and writes it all at once.</summary>
sealed class Pen(SourceFile source)
{
    readonly List<(int From, int To, string Text)> _strokes = [];

    public SourceFile Source => source;

    /// <summary>The line end of the file: that of its first line.</summary>
    public string LineEnd { get; } =
        source.Text.AsSpan().IndexOfAny('\r', '\n') is var at and >= 0
            ? source.Text[at] == '\n'
                ? "\n"
                : at + 1 < source.Text.Length && source.Text[at + 1] == '\n'
                    ? "\r\n"
                    : "\r"
            : "\n";

    /// <summary>Replaces some characters. Insertions at one place keep the order they came in.</summary>
    public void Put(int from, int to, string text) => _strokes.Add((from, to, text));

    /// <summary>Replaces a value, and keeps its quotes.</summary>
    public void PutValue(Node value, ImmutableArray<string> values) =>
        PutValue(value, YamlQuoting.Quote(values, (value as ScalarNode)?.Style ?? ScalarStyle.Any));

    public void PutValue(Node value, string text)
    {
        var (from, to) = (value.Start, value.End);
        if (from == to)
        {
            // The value is empty: whatever follows it must not run into the new one.
            var next = from < source.Text.Length ? source.Text[from] : '\n';
            text = " " + text + (char.IsWhiteSpace(next) || next is ',' or '}' ? "" : " ");
        }
        else if (from > 0 && source.Text[from - 1] == ':')
        {
            text = " " + text;
        }

        Put(from, to, text);
    }

    /// <summary>Adds one line or several after the line of a character.</summary>
    public void PutLineAfter(int at, string line)
    {
        var end = EndOfLine(at);
        if (end == source.Text.Length)
        {
            Put(end, end, LineEnd + line);
        }
        else
        {
            var next = NextLine(end);
            Put(next, next, line + LineEnd);
        }
    }

    /// <summary>
    /// The end of the comment lines that follow a character's line and are indented at least to a column: they belong to
    /// what is above them.
    /// </summary>
    public int PastComments(int at, int column)
    {
        var past = EndOfLine(at);
        for (var next = NextLine(past); next < source.Text.Length; next = NextLine(past))
        {
            var line = source.Text.AsSpan(next, EndOfLine(next) - next);
            var indent = line.IndexOfAnyExcept(' ');
            if (indent < column || line[indent] != '#')
            {
                break;
            }

            past = EndOfLine(next);
        }

        return past;
    }

    public int EndOfLine(int at)
    {
        var end = source.Text.AsSpan(at).IndexOfAny('\r', '\n');
        return end < 0 ? source.Text.Length : at + end;
    }

    /// <param name="end">The end of the line before.</param>
    public int NextLine(int end) =>
        end >= source.Text.Length ? end
        : source.Text[end] == '\r' && end + 1 < source.Text.Length && source.Text[end + 1] == '\n' ? end + 2
        : end + 1;

    public int StartOfLine(int at) => at == 0 ? 0 : source.Text.AsSpan(0, at).LastIndexOfAny('\r', '\n') + 1;

    /// <summary>The changed text; null where two changes overlap.</summary>
    public string? Text()
    {
        // From the end, so that offsets stay right. At one place insertions come before a replacement, in the order they came in.
        var strokes = _strokes
            .Select((stroke, i) => (stroke, i))
            .OrderByDescending(s => s.stroke.From)
            .ThenBy(s => s.stroke.To == s.stroke.From)
            .ThenByDescending(s => s.i)
            .Select(s => s.stroke);
        var text = new StringBuilder(source.Text);
        var written = source.Text.Length;
        foreach (var (from, to, put) in strokes)
        {
            if (to > written)
            {
                return null;
            }

            text.Remove(from, to - from).Insert(from, put);
            written = from;
        }

        return text.ToString();
    }
}
