using Spoolbook.Pdf.Drawing;
using Spoolbook.Pdf.Files;
using Spoolbook.Pdf.Fonts;
using Spoolbook.Pdf.Images;
using Spoolbook.Pdf.Structure;

namespace Spoolbook.Pdf.Documents;

/// <summary>
/// A page to draw on, in points from its top left corner. Draw only between a Begin and an End: the content of a
/// structure element, or page furniture.
/// </summary>
public sealed class PdfPage
{
    readonly PdfDocument _document;
    readonly ContentBuffer _content = new();
    readonly List<StructureElement> _owners = [];
    readonly List<PageLink> _links = [];
    readonly int _number;
    readonly Stack<(int Fill, int Outline, double Width)> _clipped = [];
    bool _open;
    int _fill,
        _outline;
    double _lineWidth = 1;

    internal PdfPage(PdfDocument document, int number, double width, double height)
    {
        _document = document;
        _number = number;
        Width = width;
        Height = height;
    }

    public double Width { get; }

    public double Height { get; }

    internal byte[] Content => _content.ToArray();

    internal IReadOnlyList<StructureElement> Owners => _owners;

    internal IReadOnlyList<PageLink> Links => _links;

    /// <summary>Begins content of an element of the document's structure. A figure also gives its place on the page.</summary>
    public void Begin(StructureElement element, (double X, double Y, double Width, double Height)? place = null)
    {
        Open();
        if (place is { } box)
        {
            element.Bounds = (box.X, Height - box.Y - box.Height, box.X + box.Width, Height - box.Y);
        }

        element.AddContent(_number, _owners.Count);
        _content.Line($"/{element.Tag}<</MCID {PdfSyntax.Number(_owners.Count)}>>BDC");
        _owners.Add(element);
    }

    /// <summary>Begins something that is not part of the document's text: a rule, a repeated head, a page number.</summary>
    public void BeginFurniture()
    {
        Open();
        _content.Line("/Artifact BMC");
    }

    public void End()
    {
        if (!_open)
        {
            throw new InvalidOperationException("End without Begin.");
        }

        _open = false;
        _content.Line("EMC");
    }

    /// <summary>Draws text with its start on the baseline.</summary>
    public void Text(double x, double baseline, string text, TrueTypeFont font, double size, int colour, bool tabular)
    {
        var subset = _document.Subset(font, out var resource);
        Fill(colour);
        _content.Line("BT").Text("/" + resource + " ").Number(size).Line("Tf");
        _content.Number(x).Number(Height - baseline).Line("Td").Text("[<");
        foreach (var set in TextSetting.Set(font, text, tabular))
        {
            if (set.Before != 0)
            {
                _content.Text(">").Number(-set.Before * 1000.0 / font.UnitsPerEm).Text("<");
            }

            _content.Glyph(subset.Slot(set));
        }
        _content.Line(">]TJ").Line("ET");
    }

    public void Path(IEnumerable<PathStep> steps, Paint paint)
    {
        if (paint.Fill is null && paint.Outline is null)
        {
            return;
        }

        if (paint.Fill is { } fill)
        {
            Fill(fill);
        }

        if (paint.Outline is { } outline)
        {
            Outline(outline, paint.Width);
        }

        var dashed = paint.Dashes.Length > 0;
        if (dashed)
        {
            Dash(paint);
        }

        foreach (var step in steps)
        {
            Step(step);
        }

        var star = paint.EvenOdd && paint.Fill is not null ? "*" : "";
        _content.Line(
            (paint.Fill, paint.Outline) switch
            {
                (null, _) => "S",
                (_, null) => "f" + star,
                _ => "B" + star,
            }
        );
        if (dashed)
        {
            _content.Line("[]0 d");
        }
    }

    public void Rectangle(double x, double y, double width, double height, Paint paint) =>
        Path(
            [
                PathStep.Move(x, y),
                PathStep.Line(x + width, y),
                PathStep.Line(x + width, y + height),
                PathStep.Line(x, y + height),
                PathStep.Close,
            ],
            paint
        );

    public void Image(double x, double y, double width, double height, PngPicture picture)
    {
        _content.Line("q").Number(width).Text("0 0 ").Number(height).Number(x).Number(Height - y - height).Line("cm");
        _content.Line($"/{_document.ImageName(picture)} Do").Line("Q");
    }

    /// <summary>Shows only what is inside this rectangle, until <see cref="EndClip"/>.</summary>
    public void BeginClip(double x, double y, double width, double height)
    {
        _clipped.Push((_fill, _outline, _lineWidth));
        _content.Line("q").Number(x).Number(Height - y - height).Number(width).Number(height).Line("re W n");
    }

    public void EndClip()
    {
        // EndClip restores the graphics state, and our copy must follow.
        (_fill, _outline, _lineWidth) = _clipped.Pop();
        _content.Line("Q");
    }

    /// <summary>Makes a place of the page known by a name, for links from this file and from others.</summary>
    public void Name(string name, double y) => _document.AddName(new PagePlace(name, 0, _number, Height - y));

    /// <summary>Puts a place of the page into the document's outline.</summary>
    /// <param name="level">1 for the outermost.</param>
    public void Outline(string title, int level, double y) => _document.AddOutline(new PagePlace(title, level, _number, Height - y));

    /// <summary>
    /// Links a rectangle of the page to an address: <c>#name</c> of a place in this file, <c>other.pdf#name</c> of one in a
    /// file beside it, or any other.
    /// </summary>
    public void Link(double x, double y, double width, double height, string address, StructureElement element) =>
        _links.Add(new PageLink(x, Height - y - height, x + width, Height - y, address, element));

    void Open()
    {
        if (_open)
        {
            throw new InvalidOperationException("Begin inside of Begin.");
        }

        _open = true;
    }

    void Fill(int colour)
    {
        if (colour == _fill)
        {
            return;
        }

        _fill = colour;
        Colour(colour, "g", "rg");
    }

    void Outline(int colour, double width)
    {
        if (colour != _outline)
        {
            Colour(colour, "G", "RG");
        }

        if (width != _lineWidth)
        {
            _content.Number(width).Line("w");
        }

        (_outline, _lineWidth) = (colour, width);
    }

    void Colour(int colour, string grey, string full)
    {
        int red = colour >> 16 & 255,
            green = colour >> 8 & 255,
            blue = colour & 255;
        if (red == green && green == blue)
        {
            _content.Number(red / 255.0).Line(grey);
        }
        else
        {
            _content.Number(red / 255.0).Number(green / 255.0).Number(blue / 255.0).Line(full);
        }
    }

    void Dash(Paint paint)
    {
        _content.Text("[");
        foreach (var length in paint.Dashes)
        {
            _content.Number(length);
        }

        _content.Line("]0 d");
    }

    void Step(PathStep step)
    {
        switch (step.Kind)
        {
            case Stroke.MoveTo:
                Point(step.X, step.Y).Line("m");
                break;
            case Stroke.LineTo:
                Point(step.X, step.Y).Line("l");
                break;
            case Stroke.Close:
                _content.Line("h");
                break;
            case Stroke.CurveTo:
                Point(step.X1, step.Y1);
                Point(step.X2, step.Y2);
                Point(step.X, step.Y).Line("c");
                break;
        }
    }

    ContentBuffer Point(double x, double y) => _content.Number(x).Number(Height - y);
}
