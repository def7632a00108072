using System.Xml.Linq;

namespace Spoolbook.Papers.Pages;

static class ElementExtensions
{
    public static IEnumerable<string> Classes(this XElement element) =>
        ((string?)element.Attribute("class") ?? "").Split((char[])[' ', '\n', '\t'], StringSplitOptions.RemoveEmptyEntries);

    // Asked of every element again and again, so it makes no list of them.
    public static bool HasClass(this XElement element, string cssClass)
    {
        var classes = (element.Attribute("class")?.Value ?? "").AsSpan();
        foreach (var part in classes.SplitAny(' ', '\n', '\t'))
        {
            if (classes[part].SequenceEqual(cssClass))
            {
                return cssClass.Length > 0;
            }
        }

        return false;
    }

    /// <summary>Adds a class, unless the element has it.</summary>
    public static void AddClass(this XElement element, string cssClass) =>
        element.SetAttributeValue("class", string.Join(' ', element.Classes().Append(cssClass).Distinct(StringComparer.Ordinal)));

    public static bool Is(this XElement element, string name) => element.Name.LocalName == name;
}
