using System.Xml.Linq;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Papers.Pages;

/// <summary>Finds what a figure's SVG has beyond the part of SVG that every paper can draw.</summary>
static class PictureCheck
{
    static readonly HashSet<string> Numbers =
    [
        "x",
        "y",
        "x1",
        "y1",
        "x2",
        "y2",
        "cx",
        "cy",
        "r",
        "rx",
        "ry",
        "width",
        "height",
        "stroke-width",
        "font-size",
    ];

    /// <summary>The house's own pictures need five; what draws them goes down by itself, and its stack has an end.</summary>
    public const int MostDepth = 40;

    public static void Check(XElement svg, Action<XObject, Sentence> report)
    {
        if (TooDeep(svg) is { } deep)
        {
            report(deep, Sentence.Of("common.picture.too-deep", ("most", MostDepth)));
            return;
        }

        const int BoxNumbers = 4;
        var box = PictureSyntax.Numbers((string?)svg.Attribute("viewBox") ?? "");
        if (box is not { Length: BoxNumbers } b || b[2] <= 0 || b[3] <= 0)
        {
            report(svg, Sentence.Of("common.picture.view-box"));
        }

        foreach (var element in svg.DescendantsAndSelf())
        {
            var name = element.Name.LocalName;
            if (!PictureVocabulary.Elements.TryGetValue(name, out var attributes))
            {
                report(element, Sentence.Of("common.picture.element", ("name", name)));
                continue;
            }
            if (name == "image" && element.Attribute("href") is null)
            {
                report(element, Sentence.Of("common.picture.image"));
            }

            for (var attribute = element.FirstAttribute; attribute is not null; attribute = attribute.NextAttribute)
            {
                if (attribute.IsNamespaceDeclaration)
                {
                    continue;
                }

                if (!attributes.Contains(attribute.Name.LocalName))
                {
                    report(element, Sentence.Of("common.picture.attribute", ("name", name), ("attribute", attribute.Name.LocalName)));
                }
                else if (!IsReadable(attribute))
                {
                    report(
                        element,
                        Sentence.Of("common.picture.value", ("attribute", attribute.Name.LocalName), ("value", attribute.Value))
                    );
                }
            }
        }
    }

    /// <summary>The first element that lies too deep, found without going down by itself; null where there is none.</summary>
    static XElement? TooDeep(XElement svg)
    {
        var (at, depth) = (svg, 0);
        while (true)
        {
            if (depth > MostDepth)
            {
                return at;
            }

            if (ElementFrom(at.FirstNode) is { } child)
            {
                (at, depth) = (child, depth + 1);
                continue;
            }

            var next = ElementFrom(at.NextNode);
            while (at != svg && next is null)
            {
                (at, depth) = (at.Parent!, depth - 1);
                next = ElementFrom(at.NextNode);
            }

            if (at == svg)
            {
                return null;
            }

            at = next!;
        }
    }

    static XElement? ElementFrom(XNode? node)
    {
        while (node is not (null or XElement))
        {
            node = node.NextNode;
        }

        return (XElement?)node;
    }

    /// <summary>url(#name): a rectangle of the same picture, and nothing that would have to be fetched.</summary>
    static bool IsPlaceInside(string value) =>
        value.StartsWith("url(#", StringComparison.Ordinal)
        && value.EndsWith(')')
        && value[5..^1].All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_');

    static bool IsReadable(XAttribute attribute)
    {
        string name = attribute.Name.LocalName,
            value = attribute.Value.Trim();
        return name switch
        {
            "fill" or "stroke" => value == "none" || PictureSyntax.Colour(value) is not null,
            "d" => PathSyntax.IsPath(value),
            "points" => PictureSyntax.AreNumbers(value),
            "stroke-dasharray" => value == "none" || PictureSyntax.AreNumbers(value),
            "clip-path" => IsPlaceInside(value),
            "href" => PngData.Picture(value) is not null,
            "transform" => PictureSyntax.Transform(value) is not null,
            _ when attribute.Parent!.Is("svg") => true,
            _ => !Numbers.Contains(name) || PictureSyntax.IsNumber(value),
        };
    }
}
