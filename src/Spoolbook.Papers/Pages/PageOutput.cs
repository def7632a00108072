using System.Text;

namespace Spoolbook.Papers.Pages;

/// <summary>What a template has printed so far, with the place in a template that each piece came from.</summary>
sealed class PageOutput
{
    readonly StringBuilder _text = new();
    string? _whole;
    readonly List<Piece> _pieces = [];
    TextLines? _lines;

    public int Length => _text.Length;

    /// <summary>All that was printed. Nothing can be added afterwards: it is kept once.</summary>
    public override string ToString()
    {
        if (_whole is null)
        {
            _whole = _text.ToString();
            _text.Clear();
            _text.Capacity = 0;
        }

        return _whole;
    }

    /// <summary>A stretch of the template itself: each character has its own place.</summary>
    public void AddTemplateText(ParsedTemplate template, int start, int length)
    {
        _pieces.Add(new Piece(_text.Length, template, start, Moves: true));
        _text.Append(template.Text, start, length);
    }

    /// <summary>A value printed by the template; all of it has the place that prints it.</summary>
    public void AddValue(ParsedTemplate template, int place, string text)
    {
        _pieces.Add(new Piece(_text.Length, template, place, Moves: false));
        _text.Append(text);
    }

    /// <summary>The place in the template for a line and column of the printed text.</summary>
    public TemplatePlace Place(int line, int column)
    {
        _lines ??= new TextLines(ToString());
        var offset = Math.Clamp(_lines.Offset(line, column), 0, ToString().Length);
        var index = _pieces.FindLastIndex(piece => piece.Start <= offset);
        if (index < 0)
        {
            return new TemplatePlace("", 1, 1);
        }

        var piece = _pieces[index];
        return piece.Template.Place(piece.Moves ? piece.At + offset - piece.Start : piece.At);
    }

    readonly record struct Piece(int Start, ParsedTemplate Template, int At, bool Moves);
}
