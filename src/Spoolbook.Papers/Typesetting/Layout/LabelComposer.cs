using System.Globalization;
using System.Xml.Linq;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting.Drawing;
using Spoolbook.Papers.Typesetting.Setting;
using Spoolbook.Papers.Typesetting.Setup;
using Spoolbook.Pdf.Drawing;
using Spoolbook.Pdf.Structure;

namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>Labels on a sheet with a grid of its own, from edge to edge: no margins, no running head.</summary>
sealed class LabelComposer
{
    const double Padding = 6.5;

    // On a label every line counts: blocks and lines are closer than on a page.
    const double Spacing = 0.2,
        Leading = 1.16;

    // A label that is too full gives way step by step, a scale of everything and one of its headings besides. First all
    // text comes down to what is still read with ease, then the headings, while the roll's name reads at arm's length; then
    // the texts of class fit, down to the smallest type; then these are shortened, and last everything shrinks to what can
    // still be read in the hand.
    static readonly (double Whole, double HeadingScale)[] _easy = [(1, 1), (0.94, 1), (LeastEasy, 1), (LeastEasy, 0.93), (LeastEasy, 0.87)],
        _fitted = [(LeastEasy, 0.87), (0.85, 0.91), (0.78, 1), (0.71, 1)],
        _shortening = [(0.71, 1), (0.65, 1), (0.6, 1)];
    static readonly double[] _fits = [7.7, 7.4, 7, 6.5, 6, 5.5, LabelFit.Least];

    const double LeastEasy = LabelFit.Easy / Styles.BodySize;

    // Fewer letters of a name say nothing.
    const int FewestLetters = 24;

    readonly BlockComposer _composer;
    readonly XElement _section;
    readonly LabelPlaces _places;

    LabelComposer(BlockComposer composer, XElement section) =>
        (_composer, _section, _places) = (composer, section, LabelPlaces.Of(section, composer.Setup));

    public static void Compose(BlockComposer composer, XElement section, Galley galley) =>
        new LabelComposer(composer, section).Compose(galley);

    void Compose(Galley galley)
    {
        (_composer.Spacing, _composer.Leading, _composer.Inks) = (Spacing, Leading, PageInks.Black);
        var labels = _section.Elements().Where(e => e.HasClass("label")).ToList();
        foreach (var places in _places.Sheets(labels))
        {
            var pieces = new List<MarkGroup>();
            for (var place = 0; place < places.Count; place++)
            {
                if (places[place] is not { } label)
                {
                    continue;
                }

                if (label.HasClass("cut"))
                {
                    pieces.Add(CutLines(place, places));
                }

                if (label.HasClass("framed"))
                {
                    pieces.Add(Frame(place));
                }

                pieces.AddRange(Label(label, place));
            }
            galley.Add(new Slice(0, [.. pieces]) { NewPage = true, WholePage = true });
        }
        (_composer.Spacing, _composer.Leading, _composer.Inks) = (1, Paragraphs.Leading, _composer.Setup.Inks);
    }

    IEnumerable<MarkGroup> Label(XElement label, int place)
    {
        var (x, y) = _places.Corner(place);
        var slices = Fitted(label, x);
        var free = _places.Height - 2 * Padding;
        var whole = Galley.Height(slices) <= free;
        foreach (var piece in Galley.Pack([.. slices]).Select(piece => piece.Shift(0, Figures.OnDots(y + Padding))))
        {
            yield return whole ? piece : piece with { Marks = [new ClipMark(x, y, _places.Width, _places.Height, piece.Marks)] };
        }
    }

    /// <summary>The edges to cut along. An edge that two labels share is drawn once, so that its dashes stay dashes.</summary>
    MarkGroup CutLines(int place, IReadOnlyList<XElement?> places)
    {
        var (x, y) = _places.Corner(place);
        bool Cut(int other) => other >= 0 && places[other]?.HasClass("cut") == true;
        var lines = new List<PageMark>
        {
            Edge(x, y + _places.Height, x + _places.Width, y + _places.Height),
            Edge(x + _places.Width, y, x + _places.Width, y + _places.Height),
        };
        if (_places.GapY > 0 || !Cut(place - _places.Columns))
        {
            lines.Add(Edge(x, y, x + _places.Width, y));
        }

        if (_places.GapX > 0 || place % _places.Columns == 0 || !Cut(place - 1))
        {
            lines.Add(Edge(x, y, x, y + _places.Height));
        }

        return MarkGroup.Furniture([.. lines]);
    }

    /// <summary>A heavy frame, by which a can is another kind from across the room.</summary>
    MarkGroup Frame(int place)
    {
        const double Inset = 2.5,
            Weight = 2.4;
        var (x, y) = _places.Corner(place);
        var paint = new Paint(null, Colours.Ink, Weight);
        return MarkGroup.Furniture(new BoxMark(x + Inset, y + Inset, _places.Width - 2 * Inset, _places.Height - 2 * Inset, paint));
    }

    static LineMark Edge(double x1, double y1, double x2, double y2) => new(x1, y1, x2, y2, 0.4, Colours.Rule) { Dashes = [3, 3] };

    IReadOnlyList<Slice> Fitted(XElement label, double x)
    {
        IReadOnlyList<Slice> slices = [];
        bool Fits((double Whole, double HeadingScale) scale, double fit, int? letters = null)
        {
            // No text of class fit is larger than what is around it.
            var least = Math.Min(1, fit / (Styles.BodySize * scale.Whole));
            slices = Set(label, x, scale.Whole, new LabelFit(least, letters, scale.HeadingScale));
            return Galley.Height(slices) <= _places.Height - 2 * Padding;
        }
        if (Fits((1, 1), Styles.BodySize) || _easy.Any(scale => Fits(scale, LabelFit.Easy)))
        {
            return slices;
        }

        if (_fitted.Any(scale => Fits(scale, LabelFit.Least) && _fits.Any(fit => Fits(scale, fit))))
        {
            return slices;
        }

        var texts = label.Descendants().Where(e => e.Is("span") && e.HasClass("fit") && Letters(e) > FewestLetters).ToList();
        int few = FewestLetters,
            most = texts.Select(Letters).DefaultIfEmpty(few).Max();
        var last = _shortening.FirstOrDefault(scale => Fits(scale, LabelFit.Least, few));
        if (last == default)
        {
            _composer.Warnings.Note(PageWarningKind.Overflow, label.Value, label);
        }
        else
        {
            // As many letters as the label holds, which may be all of them at the smallest scales.
            var many = most + 1;
            while (many - few > 1)
            {
                var middle = (few + many) / 2;
                (few, many) = Fits(last, LabelFit.Least, middle) ? (middle, many) : (few, middle);
            }
            Fits(last, LabelFit.Least, few);
        }
        foreach (var text in texts.Where(text => Letters(text) > few))
        {
            _composer.Warnings.Shortened(text, few);
        }

        return slices;
    }

    IReadOnlyList<Slice> Set(XElement label, double x, double scale, LabelFit fit)
    {
        var content = new Galley(_composer.Spacing);
        var text = Styles.Body with { Size = Styles.BodySize * scale, Fit = fit };
        var owner = new StructureElement("Div", _composer.Root);
        var scope = new Scope(x + Padding, _places.Width - 2 * Padding, _places.Height - 2 * Padding, Styles.Common(label, text), owner);
        _composer.Content(label, scope, content);
        return content.Slices;
    }

    static int Letters(XElement text) => new StringInfo(text.Value).LengthInTextElements;
}
