using System.Xml.Linq;

namespace Spoolbook.Papers.Pages;

static class ElementExtensions
{
    public static IEnumerable<string> Classes(this XElement element) =>
        ((string?)element.Attribute("class") ?? "").Split((char[])[' ', '\n', '\t'], StringSplitOptions.RemoveEmptyEntries);

    public static bool HasClass(this XElement element, string cssClass) => element.Classes().Contains(cssClass, StringComparer.Ordinal);

    /// <summary>Adds a class, unless the element has it.</summary>
    public static void AddClass(this XElement element, string cssClass) =>
        element.SetAttributeValue("class", string.Join(' ', element.Classes().Append(cssClass).Distinct(StringComparer.Ordinal)));

    public static bool Is(this XElement element, string name) => element.Name.LocalName == name;
}
