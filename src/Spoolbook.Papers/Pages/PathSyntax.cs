using System.Collections.Immutable;
using System.Globalization;
using Spoolbook.Pdf.Drawing;

namespace Spoolbook.Papers.Pages;

/// <summary>The attribute d of a path: M L H V C Q Z and their relative forms, as absolute steps.</summary>
sealed class PathSyntax
{
    // A curve's two handles and its end.
    const int Most = 6;

    readonly string _text;
    readonly List<PathStep>? _steps;
    bool _isBegun;
    int _at;
    double _x,
        _y,
        _startX,
        _startY;

    PathSyntax(string text, List<PathStep>? steps) => (_text, _steps) = (text, steps);

    /// <summary>The steps, or null if the text is not a path in this subset.</summary>
    public static ImmutableArray<PathStep>? Parse(string text)
    {
        var steps = new List<PathStep>();
        return new PathSyntax(text, steps).Read() ? [.. steps] : null;
    }

    /// <summary>Whether the text is a path in this subset.</summary>
    public static bool IsPath(string text) => new PathSyntax(text, null).Read();

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
            if (!_isBegun && command is not ('M' or 'm'))
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
        Span<double> n = stackalloc double[Most];
        switch (char.ToUpperInvariant(command))
        {
            case 'M' when Numbers(n[..2]):
                Go(baseX + n[0], baseY + n[1]);
                (_startX, _startY) = (_x, _y);
                Add(PathStep.Move(_x, _y));
                return true;
            case 'L' when Numbers(n[..2]):
                return Line(baseX + n[0], baseY + n[1]);
            case 'H' when Numbers(n[..1]):
                return Line(baseX + n[0], _y);
            case 'V' when Numbers(n[..1]):
                return Line(_x, baseY + n[0]);
            case 'C' when Numbers(n[..6]):
                Go(baseX + n[4], baseY + n[5]);
                Add(PathStep.Curve(baseX + n[0], baseY + n[1], baseX + n[2], baseY + n[3], _x, _y));
                return true;
            case 'Q' when Numbers(n[..4]):
                return Quadratic(baseX + n[0], baseY + n[1], baseX + n[2], baseY + n[3]);
            case 'Z':
                Add(PathStep.Close);
                Go(_startX, _startY);
                return true;
            default:
                return false;
        }
    }

    void Add(PathStep step)
    {
        _isBegun = true;
        _steps?.Add(step);
    }

    bool Line(double x, double y)
    {
        Go(x, y);
        Add(PathStep.Line(x, y));
        return true;
    }

    /// <summary>A curve with one handle as the same curve with two.</summary>
    bool Quadratic(double handleX, double handleY, double x, double y)
    {
        double fromX = _x,
            fromY = _y;
        Go(x, y);
        Add(
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

    bool Numbers(Span<double> numbers)
    {
        for (var i = 0; i < numbers.Length; i++)
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
                return false;
            }

            _at = end;
        }
        return true;
    }

    void Skip()
    {
        while (_at < _text.Length && (_text[_at] is ' ' or ',' or '\n' or '\t'))
        {
            _at++;
        }
    }
}
