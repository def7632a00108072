using System.Text.RegularExpressions;

namespace Spoolbook.Fuzz.Mutations;

/// <summary>Mutations that know XML: elements, attributes, entities, depth. What is no XML they leave as it is.</summary>
internal static partial class XmlKinds
{
    const int Deep = 400;

    static readonly string[] _entities =
    [
        "&#0;",
        "&#x1F600;",
        "&#xD800;",
        "&#xFFFE;",
        "&amp;",
        "&lt;",
        "&quot;",
        "&nbsp;",
        "&x;",
        "&#9;",
        "&#10;",
        "_x000D_",
        "_x0000_",
        "_xD83D_",
        "_x005F_x000D_",
        "<!--x-->",
        "<?x?>",
        "<![CDATA[x]]>",
    ];

    public static IReadOnlyList<MutationKind> All { get; } =
    [
        Text("delete a tag", Tag, (_, _) => ""),
        Text("repeat a tag", Tag, (t, c) => string.Concat(Enumerable.Repeat(t, 2 + c.Below(4)))),
        Text("another tag's name", Name, (_, c) => c.Word()),
        Text("delete an element", Element, (_, _) => ""),
        Text("repeat an element", Element, (t, c) => string.Concat(Enumerable.Repeat(t, 2 + c.Below(c.OneIn(9) ? 400 : 4)))),
        Text("an element in itself", Element, (t, c) => Nested(t, c)),
        Text("delete an attribute", Attribute, (_, _) => ""),
        Text("repeat an attribute", Attribute, (t, _) => t + t),
        Text("another value", Value, (_, c) => c.Word()),
        Text("a hostile value", Value, (_, c) =>
            c.Hostile().Replace("\"", "&quot;", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal)
        ),
        Text("a number for a value", Value, (_, c) => c.Number()),
        Text("numbers for a value", Value, (_, c) =>
            string.Join(c.Of([" ", ",", "-"]), Enumerable.Range(0, c.Below(8)).Select(_ => c.Number()))
        ),
        Text("another content", Content, (_, c) => c.Word()),
        Text("a number for content", Content, (_, c) => c.Number()),
        Text("hostile content", Content, (_, c) => c.Hostile()),
        MutationKind.OfText("an entity", (t, c) => t.Insert(c.Below(t.Length + 1), c.Of(_entities))),
        MutationKind.OfText("an entity often", (t, c) =>
            t.Insert(c.Below(t.Length + 1), string.Concat(Enumerable.Repeat(c.Of(_entities), c.Below(400))))
        ),
        MutationKind.OfText("a document type", (t, c) => "<!DOCTYPE x [<!ENTITY x \"xx\">]>" + t),
    ];

    static string Nested(string element, Chance chance)
    {
        var end = element.IndexOf('>', StringComparison.Ordinal) + 1;
        var close = element.LastIndexOf("</", StringComparison.Ordinal);
        if (end <= 0 || close < end)
        {
            return element;
        }

        var times = chance.OneIn(4) ? chance.Below(Deep) : chance.Below(8);
        return string.Concat(Enumerable.Repeat(element[..end], times))
            + element
            + string.Concat(Enumerable.Repeat(element[close..], times));
    }

    static MutationKind Text(string name, Func<Regex> what, Func<string, Chance, string> change) =>
        MutationKind.OfText(name, (text, chance) =>
        {
            // From a random place on, so that a large part need not be searched through.
            var match = what().Match(text, chance.Below(text.Length));
            match = match.Success ? match : what().Match(text);
            return match.Success ? text[..match.Index] + change(match.Value, chance) + text[(match.Index + match.Length)..] : text;
        });

    [GeneratedRegex("<[^<>]*>", RegexOptions.CultureInvariant)]
    private static partial Regex Tag();

    [GeneratedRegex("(?<=</?)[A-Za-z:]+", RegexOptions.CultureInvariant)]
    private static partial Regex Name();

    [GeneratedRegex(@"<(\w+)[^<>]*>(?:(?!<\1[\s>])[\s\S]){0,2000}?</\1>|<[^<>]*/>", RegexOptions.CultureInvariant)]
    private static partial Regex Element();

    [GeneratedRegex(@" [\w:-]+=""[^""]*""", RegexOptions.CultureInvariant)]
    private static partial Regex Attribute();

    [GeneratedRegex(@"(?<=="")[^""]*(?="")", RegexOptions.CultureInvariant)]
    private static partial Regex Value();

    [GeneratedRegex("(?<=>)[^<>\n]+(?=<)", RegexOptions.CultureInvariant)]
    private static partial Regex Content();
}
