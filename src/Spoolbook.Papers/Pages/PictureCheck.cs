using System.Xml.Linq;

namespace Spoolbook.Papers.Pages;

/// <summary>Finds what a figure's SVG holds beyond the part of SVG that every paper can draw.</summary>
static class PictureCheck
{
    public static void Check(XElement svg, Action<XObject, string> report)
    {
        if (svg.Attribute("viewBox") is null) report(svg, "<svg> needs a viewBox");
        foreach (var element in svg.DescendantsAndSelf())
        {
            string name = element.Name.LocalName;
            if (!PictureVocabulary.Elements.TryGetValue(name, out var attributes))
            {
                report(element, $"<{name}> cannot be drawn in a figure");
                continue;
            }
            foreach (var attribute in element.Attributes().Where(a => !a.IsNamespaceDeclaration))
            {
                if (!attributes.Contains(attribute.Name.LocalName)) report(element, $"<{name}> in a figure has no attribute '{attribute.Name.LocalName}'");
            }
        }
    }
}
