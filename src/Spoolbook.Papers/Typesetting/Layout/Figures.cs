using System.Xml.Linq;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting.Drawing;
using Spoolbook.Papers.Typesetting.Figures;
using Spoolbook.Papers.Typesetting.Setting;
using Spoolbook.Pdf.Structure;

namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>A picture as wide as its column, or N twelfths of it, with its caption below.</summary>
static class Figures
{
    // A hundredth of an inch: a scan at 100, 200 or 300 dots an inch has each unit of such a picture in as many dots as the next.
    const double Dot = 0.72;

    // And at 150 too, where it begins on a fiftieth.
    const double Begin = 2 * Dot;

    /// <summary>The next place at or after another, in points, where a picture for a scanner begins on a whole dot.</summary>
    public static double OnDots(double place) => Math.Ceiling(place / Begin) * Begin;

    public static void Compose(BlockComposer composer, XElement element, Scope scope, Galley galley)
    {
        var svg = element.Elements().First(e => e.Is("svg"));
        var box = PictureSyntax.Numbers((string?)svg.Attribute("viewBox") ?? "") ?? [];
        if (box.Length != 4 || box[2] <= 0 || box[3] <= 0)
        {
            return;
        }

        var width = scope.Width * (Columns.Twelfths(element) ?? 12) / 12;
        var scale = Math.Min(width / box[2], scope.MaximumHeight / box[3]);
        if (element.HasClass("dots"))
        {
            scale = Math.Max(1, Math.Round(scale / Dot)) * Dot;
        }

        double drawnWidth = box[2] * scale,
            height = box[3] * scale;
        var x =
            scope.X
            + scope.Alignment switch
            {
                Alignment.Center => (scope.Width - drawnWidth) / 2,
                Alignment.Right => scope.Width - drawnWidth,
                _ => 0,
            };
        if (element.HasClass("dots"))
        {
            x = OnDots(x);
        }

        var owner = new StructureElement("Figure", scope.Parent) { Alternative = AlternativeText.Of(element, svg) };
        var marks = new PictureReader(svg, composer.Warnings).Read(new PictureStyle(x - box[0] * scale, -box[1] * scale, scale));
        galley.Add(new Slice(height, [new MarkGroup(owner, marks) { Place = (x, 0, drawnWidth, height) }]));

        if (element.Elements().FirstOrDefault(e => e.Is("figcaption")) is not { } caption)
        {
            return;
        }

        galley.KeepLastWithNext();
        galley.Space(2);
        var style = Styles.Common(caption, scope.Text with { Size = scope.Text.Size * 0.83, Colour = Colours.Muted });
        Paragraphs.Lines(composer, caption.Nodes(), scope.Within(new StructureElement("P", scope.Parent)) with { Text = style }, galley);
    }
}
