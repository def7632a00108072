namespace Spoolbook.Papers.Pages;

/// <summary>A text and its line starts: from an offset to line and column, and back.</summary>
sealed class TextLines
{
    readonly List<int> _starts = [0];

    public TextLines(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] == '\n')
            {
                _starts.Add(i + 1);
            }
        }
    }

    public (int Line, int Column) Place(int offset)
    {
        var line = _starts.BinarySearch(offset);
        if (line < 0)
        {
            line = ~line - 1;
        }

        return (line + 1, offset - _starts[line] + 1);
    }

    public int Offset(int line, int column) => _starts[Math.Clamp(line, 1, _starts.Count) - 1] + column - 1;
}
