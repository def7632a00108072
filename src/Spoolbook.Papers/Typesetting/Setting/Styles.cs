using System.Xml.Linq;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting.Drawing;
using Spoolbook.Papers.Typesetting.Fonts;

namespace Spoolbook.Papers.Typesetting.Setting;

/// <summary>The look of elements and classes on paper; templates/style.css has the same for the screen.</summary>
static class Styles
{
    public const double BodySize = 9;
    public const double TableSize = 8.4;
    public const double RoomySize = 9;
    public const double CompactSize = 7.6;
    public const double LabelSize = 6.4;

    // Relative to the text around them, so that a label sheet can be scaled as a whole.
    const double Small = 0.83,
        Large = 1.45,
        Huge = 3.6,
        HugeTitle = 3;

    public static readonly TextStyle Body = new(Face.Regular, BodySize);

    public static TextStyle Heading(TextStyle around, int level, int? colour)
    {
        var size = around.Size * (around.Fit?.HeadingScale ?? 1);
        return level switch
        {
            1 => around with { Face = Face.Bold, Size = size * 1.9 },
            2 => around with { Face = Face.Bold, Size = size * 1.28, Colour = colour ?? Colours.Ink },
            _ => around with { Face = Face.SemiBold, Size = size * 1.06 },
        };
    }

    /// <summary>The classes that any element may have.</summary>
    public static TextStyle Common(XElement element, TextStyle style)
    {
        foreach (var cssClass in element.Classes())
        {
            style = cssClass switch
            {
                "muted" => style with { Colour = Colours.Muted },
                "small" => style with { Size = style.Size * Small },
                "large" => style with { Size = style.Size * Large },
                "huge" => style with { Size = style.Size * (element.Is("h1") ? HugeTitle : Huge) },
                "strong" => style with { Face = Face.SemiBold },
                "num" => style with { Tabular = true },
                "fit" when style.Fit is { } fit => style with { Size = style.Size * fit.Scale, Fit = fit with { Scale = 1 } },
                _ => style,
            };
        }
        return Legible(style);
    }

    public static TextStyle Inline(XElement element, TextStyle style)
    {
        style = element.Name.LocalName switch
        {
            "strong" => style with { Face = style.Face == Face.SemiBold ? Face.Bold : Face.SemiBold },
            // Inter has no italic: emphasis on paper is a stronger weight.
            "em" => style with { Face = Face.Medium },
            "code" => style with { Face = Face.Medium, Tabular = true },
            "sub" => style with { Size = style.Size * 0.7, Rise = style.Rise - style.Size * 0.15 },
            "sup" => style with { Size = style.Size * 0.7, Rise = style.Rise + style.Size * 0.33 },
            _ => style,
        };
        style = Common(element, style);
        foreach (var cssClass in element.Classes())
        {
            style = cssClass switch
            {
                "code" => style with { Face = Face.Medium, Tabular = true },
                "nowrap" => style with { OneLine = true },
                "key" => style with { Face = Face.Medium, Colour = Colours.Muted },
                // A remark beside a name that heads its row is not part of the name.
                "muted" => style with { Face = Face.Regular },
                "tag" => style with { Face = Face.Medium, Decoration = Decoration.Boxed, Size = style.Size * 0.9 },
                "inverse" => style with { Face = Face.Bold, Decoration = Decoration.Inverse, Colour = Colours.White },
                _ => style,
            };
        }
        return Legible(style);
    }

    static TextStyle Legible(TextStyle style) =>
        style.Fit is not null && style.Size < LabelFit.Least ? style with { Size = LabelFit.Least } : style;

    public static Alignment? Align(XElement element)
    {
        if (element.HasClass("num") || element.HasClass("right"))
        {
            return Alignment.Right;
        }

        return element.HasClass("center") ? Alignment.Center : null;
    }
}
