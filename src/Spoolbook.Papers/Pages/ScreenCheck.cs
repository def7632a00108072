using System.Xml.Linq;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Papers.Pages;

/// <summary>
/// Finds what the template of a page that works by a script must not have. Its script is the house's; a template cannot
/// bring another one, nor anything that loads or sends.
/// </summary>
static class ScreenCheck
{
    static readonly HashSet<string> Elements =
    [
        "button",
        "code",
        "div",
        "h1",
        "h2",
        "h3",
        "header",
        "label",
        "li",
        "main",
        "nav",
        "noscript",
        "p",
        "section",
        "small",
        "span",
        "strong",
        "textarea",
        "ul",
    ];

    static readonly HashSet<string> Attributes =
    [
        "autocomplete",
        "class",
        "data-do",
        "data-with",
        "for",
        "hidden",
        "id",
        "lang",
        "readonly",
        "role",
        "rows",
        "spellcheck",
        "tabindex",
        "type",
    ];

    public static IReadOnlyList<TemplateFault> Faults(PageDocument page) =>
        [
            .. page
                .Root.DescendantsAndSelf()
                .SelectMany(element => Of(element).Select(reason => new TemplateFault(page.Place(element), reason))),
        ];

    static IEnumerable<Sentence> Of(XElement element)
    {
        var name = element.Name.LocalName;
        if (!Elements.Contains(name) || element.Name.NamespaceName.Length > 0)
        {
            yield return Sentence.Of("paper/template.value.not-in-vocabulary", ("name", name));
        }

        foreach (var attribute in element.Attributes().Select(a => a.Name.LocalName))
        {
            if (!Attributes.Contains(attribute) && !attribute.StartsWith("aria-", StringComparison.Ordinal))
            {
                yield return Sentence.Of("paper/template.value.no-attribute", ("element", name), ("name", attribute));
            }
        }
    }
}
