using System.Xml.Linq;
using Spoolbook.Papers.Pages;

namespace Spoolbook.Papers.Web;

/// <summary>
/// Lets a keyboard reach what scrolls sideways: a picture that is wider than the screen, a table that slides. Each is called what it is,
/// so that a screen reader says where one has come to (WCAG 2.2, 2.1.1 and 4.1.2).
/// </summary>
internal static class Scrolling
{
    public static void Prepare(XElement article)
    {
        foreach (var element in article.Descendants().Where(Scrolls).ToList())
        {
            if (NameOf(element) is { Length: > 0 } name)
            {
                element.SetAttributeValue("tabindex", "0");
                element.SetAttributeValue("aria-label", name);
            }
        }
    }

    static bool Scrolls(XElement element) =>
        (element.Is("figure") && (element.HasClass("wide") || element.HasClass("phone")))
        || (element.Is("table") && element.HasClass("slides"));

    // What is written below it or above it, and else what the picture says of itself.
    static string NameOf(XElement element)
    {
        var said = element.Elements().FirstOrDefault(e => e.Is("figcaption") || e.Is("caption"))
            ?? element.Descendants().FirstOrDefault(e => e.Name.LocalName == "title")
            ?? element.Ancestors().SelectMany(a => a.Elements()).LastOrDefault(e => e.Is("h2") && e.IsBefore(element));
        var name = said?.Value ?? (string?)element.Elements().FirstOrDefault()?.Attribute("aria-label") ?? "";
        return string.Join(' ', name.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }
}
