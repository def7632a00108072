using Spoolbook.Reading.Files;

namespace Spoolbook.Reading.Trees;

/// <summary>A file without an entry that cannot be read: blanks in its place, so that all else stays where it is.</summary>
static class LeftOut
{
    /// <param name="line">A line of the entry, from 1. What is indented deeper and follows it goes too.</param>
    public static SourceFile From(SourceFile source, int line)
    {
        var depth = Indent(source.Line(line));
        var last = line;
        while (last < source.LineCount && (source.Line(last + 1).AsSpan().Trim().IsEmpty || Indent(source.Line(last + 1)) > depth))
        {
            last++;
        }

        var (from, to) = (source.StartOf(line), last < source.LineCount ? source.StartOf(last + 1) : source.Text.Length);
        return new SourceFile(
            source.Name,
            string.Concat(
                source.Text.AsSpan(0, from),
                string.Create(to - from, source.Text.AsMemory(from, to - from), (blank, text) => Blank(text.Span, blank)),
                source.Text.AsSpan(to)
            )
        );
    }

    static void Blank(ReadOnlySpan<char> text, Span<char> blank)
    {
        for (var i = 0; i < text.Length; i++)
        {
            blank[i] = text[i] is '\n' or '\r' ? text[i] : ' ';
        }
    }

    static int Indent(string line) => line.Length - line.AsSpan().TrimStart(' ').Length;
}
