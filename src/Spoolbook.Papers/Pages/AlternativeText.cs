using System.Xml.Linq;

namespace Spoolbook.Papers.Pages;

/// <summary>The alternative text of a picture: the figure's label, the SVG's label, its title and description, or the caption.</summary>
static class AlternativeText
{
    public static string Of(XElement figure, XElement svg)
    {
        string? Child(string name) => svg.Elements().FirstOrDefault(e => e.Is(name))?.Value;
        var label = (string?)figure.Attribute("aria-label") ?? (string?)svg.Attribute("aria-label");
        var words = label ?? string.Join(". ", new[] { Child("title"), Child("desc") }.OfType<string>());
        if (string.IsNullOrWhiteSpace(words))
        {
            words = figure.Elements().FirstOrDefault(e => e.Is("figcaption"))?.Value ?? "";
        }

        return words.Trim();
    }
}
