using Spoolbook.Reading.Files;

namespace Spoolbook.Reading.Trees;

/// <summary>A file with blanks in place of an entry that cannot be read, so that everything else keeps its place.</summary>
static class LeftOut
{
    /// <param name="line">A line of the entry, from 1. The deeper lines after it go too.</param>
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
