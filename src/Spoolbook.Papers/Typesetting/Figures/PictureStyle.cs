using System.Collections.Immutable;
using System.Xml.Linq;
using Spoolbook.Papers.Pages;
using Spoolbook.Pdf.Drawing;

namespace Spoolbook.Papers.Typesetting.Figures;

/// <summary>Presentation that SVG elements pass on to those inside, and where their coordinates are on the paper.</summary>
sealed record PictureStyle(double X, double Y, double Scale)
{
    public int? Fill { get; init; } = 0x111111;

    public int? Stroke { get; init; }

    public double StrokeWidth { get; init; } = 1;

    public ImmutableArray<double> Dashes { get; init; } = [];

    public bool EvenOdd { get; init; }

    public Paint Paint => new(Fill, Stroke, StrokeWidth * Scale) { Dashes = [.. Dashes.Select(d => d * Scale)], EvenOdd = EvenOdd };

    public double Left(double x) => X + x * Scale;

    public double Top(double y) => Y + y * Scale;

    public PictureStyle Of(XElement element)
    {
        var style = this;
        foreach (var attribute in element.Attributes())
        {
            var value = attribute.Value.Trim();
            style = attribute.Name.LocalName switch
            {
                "fill" => style with { Fill = PictureSyntax.Colour(value) },
                "stroke" => style with { Stroke = PictureSyntax.Colour(value) },
                "stroke-width" => style with { StrokeWidth = PictureSyntax.Number(value) ?? 1 },
                "stroke-dasharray" => style with { Dashes = PictureSyntax.Numbers(value) ?? [] },
                "fill-rule" => style with { EvenOdd = value == "evenodd" },
                "transform" when PictureSyntax.Transform(value) is { } t => style with
                {
                    X = style.Left(t.X),
                    Y = style.Top(t.Y),
                    Scale = style.Scale * t.Scale,
                },
                _ => style,
            };
        }
        return style;
    }

    public static double Number(XElement element, string name, double fallback = 0) =>
        (string?)element.Attribute(name) is { } text ? PictureSyntax.Number(text) ?? fallback : fallback;
}
