using System.Globalization;

namespace Spoolbook.Papers.Typesetting.Setting;

/// <summary>Breaks runs into lines: at blanks; within a word only where the word alone is wider than the column.</summary>
sealed class LineBreaker
{
    // What rounding errors can add up to over a line.
    const double Tolerance = 0.01;

    readonly double _width;
    readonly double _emptySize;
    readonly List<TextLine> _lines = [];
    readonly List<InlineRun> _line = [];
    readonly List<InlineRun> _word = [];
    double _pen;
    double _wordWidth;
    InlineRun? _blank;

    LineBreaker(double width, double emptySize)
    {
        _width = width;
        _emptySize = emptySize;
    }

    /// <summary>The lines of a text, at least one.</summary>
    public static IReadOnlyList<TextLine> Break(IReadOnlyList<InlineRun> runs, double width, double emptySize)
    {
        var breaker = new LineBreaker(width, emptySize);
        foreach (var run in runs)
        {
            breaker.Add(run);
        }

        breaker.EndWord();
        if (breaker._line.Count > 0 || breaker._lines.Count == 0)
        {
            breaker.EndLine();
        }

        return breaker._lines;
    }

    /// <summary>The widest word, and the widest line of the text unbroken.</summary>
    public static (double Word, double Line) Extent(IReadOnlyList<InlineRun> runs)
    {
        double word = 0,
            line = 0,
            widestWord = 0,
            widestLine = 0;
        foreach (var run in runs)
        {
            if (run.Break)
            {
                word = line = 0;
            }

            foreach (var part in Parts(run.Text))
            {
                var width = run.Style.Width(part);
                line += width;
                word = part == " " ? 0 : word + width;
                widestWord = Math.Max(widestWord, word);
                widestLine = Math.Max(widestLine, line);
            }
        }
        return (widestWord, widestLine);
    }

    void Add(InlineRun run)
    {
        if (run.Break)
        {
            EndWord();
            EndLine();
            return;
        }
        foreach (var part in Parts(run.Text))
        {
            var piece = run with { Text = part };
            if (part == " ")
            {
                EndWord();
                if (_line.Count > 0)
                {
                    _blank = piece;
                }
            }
            else
            {
                _word.Add(piece);
                _wordWidth += run.Style.Width(part);
            }
        }
    }

    /// <summary>Words and single blanks. Decorated words stay together in their box.</summary>
    static IEnumerable<string> Parts(string text)
    {
        var start = 0;
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] != ' ')
            {
                continue;
            }

            if (i > start)
            {
                yield return text[start..i];
            }

            yield return " ";
            start = i + 1;
        }
        if (start < text.Length)
        {
            yield return start == 0 ? text : text[start..];
        }
    }

    void EndWord()
    {
        if (_word.Count == 0)
        {
            return;
        }

        var blank = _blank is { } b ? b.Style.Width(" ") : 0;
        var fits = _pen + blank + _wordWidth <= _width + Tolerance;
        if (_blank is { } between)
        {
            Append(between);
        }

        _blank = null;
        if (!fits && _line.Count > 0)
        {
            EndLine();
        }

        foreach (var part in _word)
        {
            if (_wordWidth > _width + Tolerance)
            {
                AppendChopped(part);
            }
            else
            {
                Append(part);
            }
        }
        _word.Clear();
        _wordWidth = 0;
    }

    void Append(InlineRun run)
    {
        _pen += run.Style.Width(run.Text);
        if (_line.Count > 0 && _line[^1].SameLook(run))
        {
            _line[^1] = run with { Text = _line[^1].Text + run.Text };
        }
        else
        {
            _line.Add(run);
        }
    }

    /// <summary>Breaks a word that no line can hold: after a hyphen or slash if there is one, else between letters.</summary>
    void AppendChopped(InlineRun run)
    {
        var rest = run.Text;
        while (rest.Length > 0)
        {
            var fitting = Fitting(rest, run.Style);
            if (fitting == 0 && _line.Count > 0)
            {
                EndLine();
                continue;
            }
            if (fitting == 0)
            {
                fitting = StringInfo.GetNextTextElementLength(rest);
            }

            Append(run with { Text = rest[..fitting] });
            rest = rest[fitting..];
            if (rest.Length > 0)
            {
                EndLine();
            }
        }
    }

    /// <summary>How many characters of a word fit into the rest of the line.</summary>
    int Fitting(string word, TextStyle style)
    {
        int end = 0,
            goodEnd = 0;
        var width = 2 * style.Padding;
        while (end < word.Length)
        {
            var length = StringInfo.GetNextTextElementLength(word, end);
            width += style.Width(word.Substring(end, length)) - 2 * style.Padding;
            if (_pen + width > _width + Tolerance)
            {
                return goodEnd > 0 ? goodEnd : end;
            }

            end += length;
            if (word[end - 1] is '-' or '/' or '_' or '–' or '—' or '·' or '+')
            {
                goodEnd = end;
            }
        }
        return end;
    }

    void EndLine()
    {
        _lines.Add(new TextLine([.. _line], _emptySize));
        _line.Clear();
        _pen = 0;
        _blank = null;
    }
}
