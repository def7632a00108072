using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Tests.Sheets;

/// <summary>A sheet with <c>«»</c> around the characters that a finding must point at.</summary>
sealed record MarkedText(string Text, IReadOnlyList<Place> Marks)
{
    public static MarkedText Parse(string file, string marked)
    {
        var text = new System.Text.StringBuilder();
        var marks = new List<Place>();
        var (line, column, open) = (1, 1, (Line: 0, Column: 0));
        foreach (var c in marked.ReplaceLineEndings("\n"))
        {
            switch (c)
            {
                case '«':
                    open = (line, column);
                    break;
                case '»':
                    marks.Add(new Place(file, open.Line, open.Column, column - open.Column));
                    break;
                default:
                    text.Append(c);
                    (line, column) = c == '\n' ? (line + 1, 1) : (line, column + 1);
                    break;
            }
        }

        return new MarkedText(text.ToString(), marks);
    }
}
