using System.Text;
using Spoolbook.Papers.Typesetting.Drawing;
using Spoolbook.Pdf.Documents;
using Spoolbook.Pdf.Structure;

namespace Spoolbook.Papers.Typesetting;

/// <summary>Collects a paper's headings as they are drawn, for the outline.</summary>
sealed class Headings
{
    readonly List<Heading> _headings = [];

    /// <summary>Looks at a piece that is drawn on a page at a height.</summary>
    /// <param name="onLabel">Whether it is on a sheet of labels, where only the roll is a heading to look for.</param>
    public void See(MarkGroup piece, PdfPage page, double top, bool onLabel)
    {
        var (element, level) = HeadingOf(piece.Element);
        if (element is null || (onLabel && level > 1))
        {
            return;
        }

        foreach (var text in piece.Marks.OfType<TextMark>())
        {
            if (_headings.Count == 0 || !ReferenceEquals(_headings[^1].Element, element))
            {
                _headings.Add(new Heading(element, level, page, top + text.Baseline - text.Size * 1.2));
            }

            _headings[^1].Add(text.Text, top + text.Baseline);
        }
    }

    public void WriteOutline()
    {
        foreach (var heading in _headings)
        {
            heading.Page.Outline(heading.Title, heading.Level, Math.Max(0, heading.Top));
        }
    }

    // A heading's text can be in an element of its own, as a link.
    static (StructureElement? Element, int Level) HeadingOf(StructureElement? element)
    {
        while (element is not null)
        {
            if (element.Tag is ['H', >= '1' and <= '6'])
            {
                return (element, element.Tag[1] - '0');
            }

            element = element.Parent;
        }
        return (null, 0);
    }

    sealed record Heading(StructureElement Element, int Level, PdfPage Page, double Top)
    {
        readonly StringBuilder _text = new();
        double? _line;

        public string Title => string.Join(' ', _text.ToString().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

        public void Add(string text, double line)
        {
            // A line break is a blank; the pieces of one line have their own.
            _text.Append(_line is { } last && Math.Abs(last - line) > 1 ? " " : "").Append(text);
            _line = line;
        }
    }
}
