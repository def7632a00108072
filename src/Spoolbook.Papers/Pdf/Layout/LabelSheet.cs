using System.Xml.Linq;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Pdf.Drawing;
using Spoolbook.Papers.Pdf.Setting;
using Spoolbook.Press.Drawing;
using Spoolbook.Press.Structure;

namespace Spoolbook.Papers.Pdf.Layout;

/// <summary>Labels on a sheet with a grid of its own, from edge to edge: no margins, no running head.</summary>
sealed class LabelSheet
{
    const double Padding = 7;

    // A label that is too full is set smaller step by step, down to what can still be read in the hand.
    static readonly double[] Scales = [1, 0.92, 0.85, 0.78, 0.71, 0.65, 0.6];

    readonly BlockComposer _composer;
    readonly XElement _section;
    readonly int _columns, _rows, _skip;
    readonly double _width, _height, _left, _top, _gapX, _gapY;

    LabelSheet(BlockComposer composer, XElement section)
    {
        _composer = composer;
        _section = section;
        var (pageWidth, pageHeight) = composer.Setup.Size;
        _columns = Count("data-cols", 2);
        _rows = Count("data-rows", 5);
        _skip = (int)Length("data-skip", 0);
        _gapX = Length("data-gap-x", 0);
        _gapY = Length("data-gap-y", 0);
        _width = Length("data-width", (pageWidth - 2 * composer.Setup.Margin) / _columns);
        _height = Length("data-height", (pageHeight - 2 * composer.Setup.Margin) / _rows);
        _left = Length("data-left", (pageWidth - _columns * _width - (_columns - 1) * _gapX) / 2);
        _top = Length("data-top", (pageHeight - _rows * _height - (_rows - 1) * _gapY) / 2);
    }

    public static void Compose(BlockComposer composer, XElement section, Galley galley) => new LabelSheet(composer, section).Compose(galley);

    void Compose(Galley galley)
    {
        var labels = _section.Elements().Where(e => e.HasClass("label")).ToList();
        int perSheet = _columns * _rows;
        for (int start = 0; start < labels.Count + _skip % perSheet; start += perSheet)
        {
            var pieces = new List<Piece>();
            for (int place = 0; place < perSheet; place++)
            {
                int label = start + place - _skip % perSheet;
                if (label >= 0 && label < labels.Count) pieces.AddRange(Label(labels[label], place));
            }
            galley.Add(new Slice(0, [.. pieces]) { NewPage = true, WholePage = true });
        }
    }

    IEnumerable<Piece> Label(XElement label, int place)
    {
        double x = _left + place % _columns * (_width + _gapX), y = _top + place / _columns * (_height + _gapY);
        if (label.HasClass("cut")) yield return Piece.Furniture(new BoxMark(x, y, _width, _height, new Paint(null, Colours.Hairline, 0.4) { Dashes = [3, 3] }));

        var slices = Fitted(label, x);
        double free = _height - 2 * Padding;
        foreach (var piece in Galley.Pack([.. slices]).Select(piece => piece.Shift(0, y + Padding)))
        {
            bool whole = Galley.Height(slices) <= free;
            yield return whole ? piece : piece with { Marks = [new ClipMark(x, y, _width, _height, piece.Marks)] };
        }
    }

    IReadOnlyList<Slice> Fitted(XElement label, double x)
    {
        IReadOnlyList<Slice> slices = [];
        foreach (double scale in Scales)
        {
            var content = new Galley();
            var text = Styles.Body with { Size = Styles.BodySize * scale };
            var owner = new StructureElement("Div", _composer.Root);
            var scope = new Scope(x + Padding, _width - 2 * Padding, _height - 2 * Padding, Styles.Common(label, text), owner);
            _composer.Content(label, scope, content);
            slices = content.Slices;
            if (Galley.Height(slices) <= _height - 2 * Padding) return slices;
        }
        _composer.Warnings.Note(PageWarningKind.Overflow, "", label.Value, label);
        return slices;
    }

    double Length(string name, double fallback) => Measure.Points((string?)_section.Attribute(name), fallback);

    int Count(string name, int fallback) => Math.Max(1, (int)Length(name, fallback));
}
