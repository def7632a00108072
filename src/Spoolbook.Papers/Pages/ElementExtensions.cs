using System.Xml.Linq;

namespace Spoolbook.Papers.Pages;

static class ElementExtensions
{
    public static IEnumerable<string> Classes(this XElement element) =>
        ((string?)element.Attribute("class") ?? "").Split((char[])[' ', '\n', '\t'], StringSplitOptions.RemoveEmptyEntries);

    public static bool HasClass(this XElement element, string cssClass) => element.Classes().Contains(cssClass, StringComparer.Ordinal);

    public static bool Is(this XElement element, string name) => element.Name.LocalName == name;
}
