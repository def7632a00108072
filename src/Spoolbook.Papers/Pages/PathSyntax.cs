using System.Collections.Immutable;
using System.Globalization;
using Spoolbook.Pdf.Drawing;

namespace Spoolbook.Papers.Pages;

/// <summary>The attribute d of a path: M L H V C Q Z and their relative forms, as absolute steps.</summary>
sealed class PathSyntax
{
    readonly string _text;
    readonly List<PathStep> _steps = [];
    int _at;
    double _x,
        _y,
        _startX,
        _startY;

    PathSyntax(string text) => _text = text;

    /// <summary>The steps, or null if the text is not a path in this subset.</summary>
    public static ImmutableArray<PathStep>? Parse(string text)
    {
        var path = new PathSyntax(text);
        return path.Read() ? [.. path._steps] : null;
    }

    bool Read()
    {
        var command = ' ';
        Skip();
        while (_at < _text.Length)
        {
            if (char.IsAsciiLetter(_text[_at]))
            {
                command = _text[_at++];
            }
            else
            {
                // Points after the first of a move are lines, and after a close a new letter is needed.
                command = command switch
                {
                    'M' => 'L',
                    'm' => 'l',
                    'Z' or 'z' => ' ',
                    _ => command,
                };
            }
            if (_steps.Count == 0 && command is not ('M' or 'm'))
            {
                return false;
            }

            if (!Step(command))
            {
                return false;
            }

            Skip();
        }
        return true;
    }

    bool Step(char command)
    {
        var relative = char.IsAsciiLetterLower(command);
        double baseX = relative ? _x : 0,
            baseY = relative ? _y : 0;
        switch (char.ToUpperInvariant(command))
        {
            case 'M' when Numbers(2) is { } n:
                Go(baseX + n[0], baseY + n[1]);
                (_startX, _startY) = (_x, _y);
                _steps.Add(PathStep.Move(_x, _y));
                return true;
            case 'L' when Numbers(2) is { } n:
                return Line(baseX + n[0], baseY + n[1]);
            case 'H' when Numbers(1) is { } n:
                return Line(baseX + n[0], _y);
            case 'V' when Numbers(1) is { } n:
                return Line(_x, baseY + n[0]);
            case 'C' when Numbers(6) is { } n:
                Go(baseX + n[4], baseY + n[5]);
                _steps.Add(PathStep.Curve(baseX + n[0], baseY + n[1], baseX + n[2], baseY + n[3], _x, _y));
                return true;
            case 'Q' when Numbers(4) is { } n:
                return Quadratic(baseX + n[0], baseY + n[1], baseX + n[2], baseY + n[3]);
            case 'Z':
                _steps.Add(PathStep.Close);
                Go(_startX, _startY);
                return true;
            default:
                return false;
        }
    }

    bool Line(double x, double y)
    {
        Go(x, y);
        _steps.Add(PathStep.Line(x, y));
        return true;
    }

    /// <summary>A curve with one handle as the same curve with two.</summary>
    bool Quadratic(double handleX, double handleY, double x, double y)
    {
        double fromX = _x,
            fromY = _y;
        Go(x, y);
        _steps.Add(
            PathStep.Curve(
                fromX + (handleX - fromX) * 2 / 3,
                fromY + (handleY - fromY) * 2 / 3,
                x + (handleX - x) * 2 / 3,
                y + (handleY - y) * 2 / 3,
                x,
                y
            )
        );
        return true;
    }

    void Go(double x, double y) => (_x, _y) = (x, y);

    double[]? Numbers(int count)
    {
        var numbers = new double[count];
        for (var i = 0; i < count; i++)
        {
            Skip();
            var end = _at;
            if (end < _text.Length && (_text[end] is '+' or '-'))
            {
                end++;
            }

            var point = false;
            while (end < _text.Length && (char.IsAsciiDigit(_text[end]) || _text[end] == '.' && !point))
            {
                point |= _text[end] == '.';
                end++;
            }
            if (!double.TryParse(_text.AsSpan(_at, end - _at), NumberStyles.Float, CultureInfo.InvariantCulture, out numbers[i]))
            {
                return null;
            }

            _at = end;
        }
        return numbers;
    }

    void Skip()
    {
        while (_at < _text.Length && (_text[_at] is ' ' or ',' or '\n' or '\t'))
        {
            _at++;
        }
    }
}
