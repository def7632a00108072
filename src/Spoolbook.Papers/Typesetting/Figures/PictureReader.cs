using System.Collections.Immutable;
using System.Xml.Linq;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting.Drawing;
using Spoolbook.Papers.Typesetting.Fonts;
using Spoolbook.Papers.Typesetting.Setting;
using Spoolbook.Pdf.Drawing;

namespace Spoolbook.Papers.Typesetting.Figures;

/// <summary>Draws the SVG of a figure as marks: every shape a vector, every text a text.</summary>
sealed class PictureReader(XElement svg, WarningBook warnings)
{
    // The distance of a quarter circle's handles from its ends, as a share of the radius.
    const double Kappa = 0.5522847498;

    public ImmutableArray<PageMark> Read(PictureStyle style) => [.. svg.Elements().SelectMany(element => Marks(element, style))];

    IEnumerable<PageMark> Marks(XElement element, PictureStyle outer)
    {
        if (element.HasClass("only-screen"))
        {
            return [];
        }

        var style = outer.Of(element);
        var marks = element.Name.LocalName switch
        {
            "g" => element.Elements().SelectMany(child => Marks(child, style)),
            "rect" => Rectangle(element, style),
            "line" =>
            [
                new LineMark(
                    style.Left(PictureStyle.Number(element, "x1")),
                    style.Top(PictureStyle.Number(element, "y1")),
                    style.Left(PictureStyle.Number(element, "x2")),
                    style.Top(PictureStyle.Number(element, "y2")),
                    style.StrokeWidth * style.Scale,
                    style.Stroke ?? Colours.Ink
                )
                {
                    Dashes = style.Paint.Dashes,
                },
            ],
            "polyline" => Polygon(element, style, close: false),
            "polygon" => Polygon(element, style, close: true),
            "path" => Path(PathSyntax.Parse((string?)element.Attribute("d") ?? "") ?? [], style),
            "circle" => Circle(element, style),
            "image" => Image(element, style),
            "text" => Text(element, style),
            _ => [],
        };
        return Clip(element, outer, marks);
    }

    IEnumerable<PageMark> Clip(XElement element, PictureStyle style, IEnumerable<PageMark> marks)
    {
        if ((string?)element.Attribute("clip-path") is not { } reference)
        {
            return marks;
        }

        var name = reference.Replace("url(#", "", StringComparison.Ordinal).TrimEnd(')');
        var area = svg.Descendants()
            .FirstOrDefault(e => e.Is("clipPath") && (string?)e.Attribute("id") == name)
            ?.Elements()
            .FirstOrDefault(e => e.Is("rect"));
        if (area is null)
        {
            return marks;
        }

        style = style.Of(element);
        return
        [
            new ClipMark(
                style.Left(PictureStyle.Number(area, "x")),
                style.Top(PictureStyle.Number(area, "y")),
                PictureStyle.Number(area, "width") * style.Scale,
                PictureStyle.Number(area, "height") * style.Scale,
                [.. marks]
            ),
        ];
    }

    static IEnumerable<PageMark> Rectangle(XElement element, PictureStyle style)
    {
        double x = style.Left(PictureStyle.Number(element, "x")),
            y = style.Top(PictureStyle.Number(element, "y"));
        double width = PictureStyle.Number(element, "width") * style.Scale,
            height = PictureStyle.Number(element, "height") * style.Scale;
        var radius = Math.Min(PictureStyle.Number(element, "rx") * style.Scale, Math.Min(width, height) / 2);
        if (radius <= 0)
        {
            return [new BoxMark(x, y, width, height, style.Paint)];
        }

        double right = x + width,
            bottom = y + height,
            h = radius * (1 - Kappa);
        return
        [
            new PathMark(
                [
                    PathStep.Move(x + radius, y),
                    PathStep.Line(right - radius, y),
                    PathStep.Curve(right - h, y, right, y + h, right, y + radius),
                    PathStep.Line(right, bottom - radius),
                    PathStep.Curve(right, bottom - h, right - h, bottom, right - radius, bottom),
                    PathStep.Line(x + radius, bottom),
                    PathStep.Curve(x + h, bottom, x, bottom - h, x, bottom - radius),
                    PathStep.Line(x, y + radius),
                    PathStep.Curve(x, y + h, x + h, y, x + radius, y),
                    PathStep.Close,
                ],
                style.Paint
            ),
        ];
    }

    static IEnumerable<PageMark> Circle(XElement element, PictureStyle style)
    {
        double x = style.Left(PictureStyle.Number(element, "cx")),
            y = style.Top(PictureStyle.Number(element, "cy"));
        double r = PictureStyle.Number(element, "r") * style.Scale,
            k = r * Kappa;
        return
        [
            new PathMark(
                [
                    PathStep.Move(x + r, y),
                    PathStep.Curve(x + r, y + k, x + k, y + r, x, y + r),
                    PathStep.Curve(x - k, y + r, x - r, y + k, x - r, y),
                    PathStep.Curve(x - r, y - k, x - k, y - r, x, y - r),
                    PathStep.Curve(x + k, y - r, x + r, y - k, x + r, y),
                    PathStep.Close,
                ],
                style.Paint
            ),
        ];
    }

    static IEnumerable<PageMark> Image(XElement element, PictureStyle style)
    {
        if (PngData.Picture((string?)element.Attribute("href") ?? "") is not { } picture)
        {
            return [];
        }

        return
        [
            new ImageMark(
                style.Left(PictureStyle.Number(element, "x")),
                style.Top(PictureStyle.Number(element, "y")),
                PictureStyle.Number(element, "width") * style.Scale,
                PictureStyle.Number(element, "height") * style.Scale,
                picture
            ),
        ];
    }

    static IEnumerable<PageMark> Polygon(XElement element, PictureStyle style, bool close)
    {
        var numbers = PictureSyntax.Numbers((string?)element.Attribute("points") ?? "") ?? [];
        var steps = new List<PathStep>();
        for (var i = 0; i + 1 < numbers.Length; i += 2)
        {
            steps.Add(i == 0 ? PathStep.Move(numbers[i], numbers[i + 1]) : PathStep.Line(numbers[i], numbers[i + 1]));
        }
        if (close && steps.Count > 0)
        {
            steps.Add(PathStep.Close);
        }

        return Path([.. steps], style);
    }

    static IEnumerable<PageMark> Path(ImmutableArray<PathStep> steps, PictureStyle style)
    {
        if (steps.IsEmpty)
        {
            return [];
        }

        return
        [
            new PathMark(
                [
                    .. steps.Select(s => new PathStep(
                        s.Kind,
                        style.Left(s.X1),
                        style.Top(s.Y1),
                        style.Left(s.X2),
                        style.Top(s.Y2),
                        style.Left(s.X),
                        style.Top(s.Y)
                    )),
                ],
                style.Paint
            ),
        ];
    }

    IEnumerable<PageMark> Text(XElement element, PictureStyle style)
    {
        var text = string.Concat(element.Nodes().OfType<XText>().Select(warnings.Clean)).Replace(Escaping.LineBreak, ' ').Trim();
        if (text.Length == 0 || style.Fill is not { } colour)
        {
            return [];
        }

        var size = PictureStyle.Number(element, "font-size", 10) * style.Scale;
        var face = (string?)element.Attribute("font-weight") switch
        {
            "bold" or "700" => Face.Bold,
            "600" => Face.SemiBold,
            "500" => Face.Medium,
            _ => Face.Regular,
        };
        var width = TextMeasure.Width(text, face, size, tabular: true);
        var x =
            style.Left(PictureStyle.Number(element, "x"))
            - (string?)element.Attribute("text-anchor") switch
            {
                "middle" => width / 2,
                "end" => width,
                _ => 0,
            };
        return [new TextMark(x, style.Top(PictureStyle.Number(element, "y")), text, face, size, colour, Tabular: true)];
    }
}
