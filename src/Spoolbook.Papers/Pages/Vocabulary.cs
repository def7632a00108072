using System.Globalization;

namespace Spoolbook.Papers.Pages;

/// <summary>The elements, classes and attributes of a paper's page.</summary>
static class Vocabulary
{
    static readonly string[] Anywhere =
    [
        "only-paper",
        "only-screen",
        "narrow",
        "muted",
        "small",
        "large",
        "huge",
        "center",
        "right",
        "strong",
    ];
    static readonly string[] Widths = [.. Enumerable.Range(1, 12).Select(n => string.Create(CultureInfo.InvariantCulture, $"w{n}"))];
    static readonly string[] Alignments = ["num", "right", "center", "nowrap"];
    static readonly string[] FieldSpans = ["span-2", "span-3", "span-4", "span-5", "span-6", "tall"];
    static readonly string[] FieldColumns = ["cols-1", "cols-2", "cols-3", "cols-4", "cols-5", "cols-6"];

    public static readonly IReadOnlyList<string> GlobalAttributes = ["class", "id", "lang"];

    public static readonly IReadOnlyDictionary<string, ElementRule> Elements = new ElementRule[]
    {
        new("article", Holds.Blocks),
        new("section", Holds.Blocks)
        {
            Classes = ["keep", "front", "page", "sheet"],
            Attributes =
            [
                "data-cols",
                "data-rows",
                "data-width",
                "data-height",
                "data-top",
                "data-left",
                "data-gap-x",
                "data-gap-y",
                "data-skip",
            ],
        },
        new("header", Holds.Blocks),
        new("div", Holds.TextOrBlocks) { Classes = ["break", "row", "side", "keep", "label", "cut", "framed", .. Widths, .. FieldSpans] },
        new("h1", Holds.Text),
        new("h2", Holds.Text),
        new("h3", Holds.Text),
        new("p", Holds.Text) { Classes = ["write", "fit"] },
        new("ul", Holds.NamedElements) { Classes = ["checks", "plain", "across"], Children = ["li"] },
        new("ol", Holds.NamedElements) { Children = ["li"] },
        new("li", Holds.TextOrBlocks) { Classes = ["done"] },
        new("dl", Holds.NamedElements) { Classes = ["fields", .. FieldColumns], Children = ["div"] },
        new("dt", Holds.Text),
        new("dd", Holds.TextOrBlocks) { Classes = ["num", "nowrap"] },
        new("aside", Holds.TextOrBlocks) { Classes = ["note", "warning", "caution"] },
        new("hr", Holds.Nothing),
        new("table", Holds.NamedElements)
        {
            Classes = ["grid", "compact", "fitted", "roomy", "keep"],
            Children = ["caption", "colgroup", "thead", "tbody", "tfoot"],
        },
        new("caption", Holds.Text),
        new("colgroup", Holds.NamedElements) { Children = ["col"] },
        new("col", Holds.Nothing) { Classes = [.. Widths, .. Alignments, "rest"], Attributes = ["data-width"] },
        new("thead", Holds.NamedElements) { Children = ["tr"] },
        new("tbody", Holds.NamedElements) { Children = ["tr"] },
        new("tfoot", Holds.NamedElements) { Children = ["tr"] },
        new("tr", Holds.NamedElements) { Classes = ["group", "total", "flag", "blank", "more"], Children = ["th", "td"] },
        new("th", Holds.TextOrBlocks) { Classes = Alignments, Attributes = ["scope", "colspan", "rowspan"] },
        new("td", Holds.TextOrBlocks) { Classes = Alignments, Attributes = ["colspan", "rowspan"] },
        new("figure", Holds.NamedElements)
        {
            Classes = [.. Widths, "wide", "phone", "mark", "dots"],
            Attributes = ["aria-label"],
            Children = ["svg", "figcaption"],
        },
        new("figcaption", Holds.Text),
        new("strong", Holds.Text),
        new("em", Holds.Text),
        new("span", Holds.Text) { Classes = ["code", "tag", "inverse", "num", "nowrap", "key", "fit"] },
        new("code", Holds.Text),
        new("a", Holds.Text) { Attributes = ["href"] },
        new("sub", Holds.Text),
        new("sup", Holds.Text),
        new("br", Holds.Nothing),
        new("svg", Holds.Picture),
    }.ToDictionary(rule => rule.Name, StringComparer.Ordinal);

    public static readonly IReadOnlySet<string> Inline = new HashSet<string>(
        ["strong", "em", "span", "code", "a", "sub", "sup", "br"],
        StringComparer.Ordinal
    );

    public static readonly IReadOnlySet<string> Blocks = new HashSet<string>(
        ["section", "header", "div", "h1", "h2", "h3", "p", "ul", "ol", "dl", "aside", "hr", "table", "figure"],
        StringComparer.Ordinal
    );

    public static bool Knows(ElementRule rule, string cssClass) =>
        rule.Classes.Contains(cssClass, StringComparer.Ordinal) || Anywhere.Contains(cssClass, StringComparer.Ordinal);
}
