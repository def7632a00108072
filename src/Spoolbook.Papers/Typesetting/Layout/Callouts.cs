using System.Xml.Linq;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting.Drawing;
using Spoolbook.Pdf.Drawing;
using Spoolbook.Pdf.Structure;

namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>Notes, warnings and cautions in a box. Their weight is in the line, not in the colour: they survive any printer.</summary>
static class Callouts
{
    const double Padding = 6,
        Bar = 3,
        Sign = 15;

    public static void Compose(BlockComposer composer, XElement element, Scope scope, Galley galley)
    {
        var signed = element.HasClass("warning") || element.HasClass("caution");
        var left = Bar + Padding + (signed ? Sign : 0);
        var inner = scope.Inset(left, Padding).Within(new StructureElement("Div", scope.Parent));
        var frame = new Frame((top, height) => Box(element, scope, composer.Inks.CallOut, top, height));
        var content = new Galley();
        composer.Content(element, inner with { MaximumHeight = scope.MaximumHeight - 2 * Padding }, content);
        if (content.Count == 0)
        {
            return;
        }

        var start = galley.Count;
        galley.Add(new Slice(Padding - 1, []) { KeepWithNext = Keep.Always });
        if (signed)
        {
            content.Change(0, slice =>
                ReferenceEquals(slice, content.Slices[0])
                    ? slice with
                    {
                        Pieces = slice.Pieces.Insert(0, Triangle(scope.X + Bar + Padding)),
                    }
                    : slice
            );
        }

        foreach (var slice in content.Slices)
        {
            galley.Add(slice);
        }

        galley.KeepLastWithNext();
        galley.Add(new Slice(Padding, []));
        galley.Change(start, slice => slice with { Frames = slice.Frames.Insert(0, frame) });
        galley.KeepTogether(start);
    }

    static IEnumerable<PageMark> Box(XElement element, Scope scope, int? colour, double top, double height)
    {
        bool caution = element.HasClass("caution"),
            warning = element.HasClass("warning");
        var line = caution ? 1.2 : 0.5;
        yield return new BoxMark(scope.X, top, scope.Width, height, new Paint(null, caution ? Colours.Ink : Colours.Rule, line));
        yield return new BoxMark(scope.X, top, Bar, height, new Paint(caution || warning ? Colours.Ink : colour ?? Colours.Hairline, null));
    }

    /// <summary>A triangle with an exclamation mark: the warning sign, drawn because the font has none.</summary>
    static MarkGroup Triangle(double x)
    {
        const double Side = 10.5,
            Height = 9.4,
            Top = 1.2;
        var middle = x + Side / 2;
        return MarkGroup.Furniture(
            new PathMark(
                [PathStep.Move(middle, Top), PathStep.Line(x + Side, Top + Height), PathStep.Line(x, Top + Height), PathStep.Close],
                new Paint(Colours.Ink, Colours.Ink, 0.6)
            ),
            new LineMark(middle, Top + 3.1, middle, Top + 6.2, 1.1, Colours.White),
            new BoxMark(middle - 0.55, Top + 7.1, 1.1, 1.1, new Paint(Colours.White, null))
        );
    }
}
