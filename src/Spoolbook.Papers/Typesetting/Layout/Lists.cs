using System.Globalization;
using System.Xml.Linq;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting.Drawing;
using Spoolbook.Papers.Typesetting.Fonts;
using Spoolbook.Papers.Typesetting.Setting;
using Spoolbook.Pdf.Drawing;
using Spoolbook.Pdf.Structure;

namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>Lists with bullets, numbers or boxes to tick.</summary>
static class Lists
{
    public static void Compose(BlockComposer composer, XElement element, Scope scope, Galley galley)
    {
        bool numbered = element.Is("ol"),
            boxes = element.HasClass("checks");
        var list = new StructureElement("L", scope.Parent) { Numbered = numbered };
        var indent = Indent(element, scope.Text.Size);
        var number = 0;
        foreach (var item in element.Elements().Where(e => !e.HasClass("only-screen")))
        {
            number++;
            var entry = new StructureElement("LI", list);
            var start = galley.Count;
            galley.Space(boxes ? 3 : 1.5);
            var label =
                boxes ? TickBox(composer, item, entry, scope)
                : indent == 0 ? null
                : Label(numbered ? number.ToString(CultureInfo.InvariantCulture) + "." : "•", entry, scope);
            var style = Styles.Common(item, scope.Text);
            composer.Content(item, scope.Inset(indent, 0).Within(new StructureElement("LBody", entry)) with { Text = style }, galley);
            if (label is { } piece)
            {
                Prepend(galley, start, piece);
            }
        }
    }

    /// <summary>The indent of a list's text from its marks.</summary>
    public static double Indent(XElement list, double size) =>
        list.HasClass("plain") || list.HasClass("across") ? 0 : size * (list.HasClass("checks") ? 1.75 : 1.5);

    /// <summary>The label belongs to the item's first slice, before its text.</summary>
    static void Prepend(Galley galley, int at, MarkGroup label)
    {
        var first = true;
        galley.Change(at, slice =>
        {
            if (!first)
            {
                return slice;
            }

            first = false;
            return slice with { Pieces = slice.Pieces.Insert(0, label) };
        });
    }

    static MarkGroup Label(string text, StructureElement entry, Scope scope)
    {
        var baseline = TextMeasure.Baseline(Face.Regular, scope.Text.Size, scope.Text.Size * 1.32);
        return new MarkGroup(
            new StructureElement("Lbl", entry),
            [new TextMark(scope.X + 2, baseline, text, scope.Text.Face, scope.Text.Size, scope.Text.Colour, true)]
        );
    }

    static MarkGroup TickBox(BlockComposer composer, XElement item, StructureElement entry, Scope scope)
    {
        var done = item.HasClass("done");
        var words = composer.Setup.Words;
        double size = scope.Text.Size,
            side = size * 0.95,
            x = scope.X + 0.5,
            y = size * 0.18;
        var owner = new StructureElement("Lbl", entry) { Alternative = done ? words.Done : words.NotDone };
        var box = new BoxMark(x, y, side, side, new Paint(null, Colours.Ink, 0.7));
        if (!done)
        {
            return new MarkGroup(owner, [box]);
        }

        var tick = new PathMark(
            [
                PathStep.Move(x + side * 0.2, y + side * 0.52),
                PathStep.Line(x + side * 0.42, y + side * 0.76),
                PathStep.Line(x + side * 0.82, y + side * 0.22),
            ],
            new Paint(null, Colours.Ink, 1.2)
        );
        return new MarkGroup(owner, [box, tick]);
    }
}
