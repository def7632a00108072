using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Files;

/// <summary>
/// A file's text and where its lines begin. Lines end at LF, CR LF or CR, as editors count them. YAML has rarer line ends
/// (U+0085, U+2028) that do not count, so places are worked out from offsets and not from the parser's lines.
/// </summary>
sealed class SourceFile
{
    readonly List<int> _starts = [0];

    public SourceFile(string name, string text)
    {
        Name = name;
        Text = text;
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] == '\n' || (text[i] == '\r' && !(i + 1 < text.Length && text[i + 1] == '\n')))
            {
                _starts.Add(i + 1);
            }
        }
    }

    public string Name { get; }

    public string Text { get; }

    public int LineCount => _starts.Count;

    /// <summary>The place of the characters between two offsets, cut off at the end of the first line.</summary>
    public Place At(int from, int to)
    {
        from = Math.Clamp(from, 0, Text.Length);
        var line = LineOf(from);
        var length = Math.Clamp(Math.Min(to, EndOf(line)) - from, 0, Text.Length);
        return new Place(Name, line + 1, from - _starts[line] + 1, length);
    }

    /// <summary>The first line of the file.</summary>
    public Place Top => At(0, EndOf(0));

    /// <summary>The rest of the line from an offset, without blanks at its end.</summary>
    public Place RestOfLine(int from)
    {
        var line = LineOf(Math.Clamp(from, 0, Text.Length));
        var to = EndOf(line);
        while (to > from && char.IsWhiteSpace(Text[to - 1]))
        {
            to--;
        }

        return At(from, to);
    }

    /// <summary>A line's text without its end; lines count from 1.</summary>
    public string Line(int number) => Text[_starts[number - 1]..EndOf(number - 1)];

    /// <summary>The offset of a line's first character; lines count from 1.</summary>
    public int StartOf(int number) => _starts[number - 1];

    int LineOf(int offset)
    {
        var found = _starts.BinarySearch(offset);
        return found >= 0 ? found : ~found - 1;
    }

    int EndOf(int line)
    {
        var end = line + 1 < _starts.Count ? _starts[line + 1] : Text.Length;
        while (end > _starts[line] && Text[end - 1] is '\n' or '\r')
        {
            end--;
        }

        return end;
    }
}
