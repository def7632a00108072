using System.Collections.Immutable;
using System.Text;
using Spoolbook.Reading.Files;
using Spoolbook.Reading.Trees;
using YamlDotNet.Core;

namespace Spoolbook.Reading.Editing;

/// <summary>Notes what to write where, and writes it all at once.</summary>
sealed class Pen(SourceFile source)
{
    readonly List<(int From, int To, string Text)> _strokes = [];

    public SourceFile Source => source;

    /// <summary>How the file ends its lines: as its first line does.</summary>
    public string LineEnd { get; } =
        source.Text.AsSpan().IndexOfAny('\r', '\n') is var at and >= 0
            ? source.Text[at] == '\n'
                ? "\n"
                : at + 1 < source.Text.Length && source.Text[at + 1] == '\n'
                    ? "\r\n"
                    : "\r"
            : "\n";

    /// <summary>Writes in the place of some characters. What is inserted at one place stands in the order in which it came.</summary>
    public void Put(int from, int to, string text) => _strokes.Add((from, to, text));

    /// <summary>Writes values in the place of one, in its quotes.</summary>
    public void PutValue(Node value, ImmutableArray<string> values) =>
        PutValue(value, YamlQuoting.Quote(values, (value as ScalarNode)?.Style ?? ScalarStyle.Any));

    /// <summary>Writes a text in the place of a value.</summary>
    public void PutValue(Node value, string text)
    {
        var (from, to) = (value.Start, value.End);
        if (from == to)
        {
            // Nothing is written there yet: what comes right after it must not run into it.
            var next = from < source.Text.Length ? source.Text[from] : '\n';
            text = " " + text + (char.IsWhiteSpace(next) || next is ',' or '}' ? "" : " ");
        }
        else if (from > 0 && source.Text[from - 1] == ':')
        {
            text = " " + text;
        }

        Put(from, to, text);
    }

    /// <summary>Writes a line of its own, or several, after the line that holds a character.</summary>
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
    /// The end of the lines of comment that follow a character's line and are farther in than a column: they belong to
    /// what is before them.
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

    /// <summary>The first character after a line's text.</summary>
    public int EndOfLine(int at)
    {
        var end = source.Text.AsSpan(at).IndexOfAny('\r', '\n');
        return end < 0 ? source.Text.Length : at + end;
    }

    /// <summary>Where the next line begins after the end of one.</summary>
    public int NextLine(int end) =>
        end >= source.Text.Length ? end
        : source.Text[end] == '\r' && end + 1 < source.Text.Length && source.Text[end + 1] == '\n' ? end + 2
        : end + 1;

    /// <summary>Where the line of a character begins.</summary>
    public int StartOfLine(int at) => at == 0 ? 0 : source.Text.AsSpan(0, at).LastIndexOfAny('\r', '\n') + 1;

    /// <summary>The text with everything written in; null where two strokes would write over one another.</summary>
    public string? Text()
    {
        // From the end, so that offsets hold; insertions before what is written over at the same place, and in the order in which they
        // came.
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
