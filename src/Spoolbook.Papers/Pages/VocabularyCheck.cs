using System.Globalization;
using System.Xml.Linq;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Papers.Pages;

/// <summary>Finds what a page has beyond the vocabulary, so that nothing is guessed at or left out.</summary>
sealed class VocabularyCheck
{
    public const int MaximumDepth = 40;
    const int MaximumSpan = 100;

    static readonly HashSet<string> Namespaces = ["", "http://www.w3.org/1999/xhtml", "http://www.w3.org/2000/svg"];

    readonly PageDocument _page;
    readonly List<TemplateFault> _faults = [];

    VocabularyCheck(PageDocument page) => _page = page;

    public static IReadOnlyList<TemplateFault> Faults(PageDocument page)
    {
        var check = new VocabularyCheck(page);
        if (page.Root.Name.LocalName != "article")
        {
            check.Report(page.Root, Sentence.Of("paper/template.value.one-article"));
        }
        else
        {
            check.Element(page.Root, 0);
        }

        return check._faults;
    }

    void Element(XElement element, int depth)
    {
        var name = element.Name.LocalName;
        if (depth > MaximumDepth)
        {
            Report(element, Sentence.Of("paper/template.value.elements-too-deep", ("most", MaximumDepth)));
            return;
        }
        if (!Vocabulary.Elements.TryGetValue(name, out var rule) || !Namespaces.Contains(element.Name.NamespaceName))
        {
            Report(element, Sentence.Of("paper/template.value.not-in-vocabulary", ("name", name)));
            return;
        }
        if (rule.Holds == Holds.Picture)
        {
            PictureCheck.Check(element, Report);
            return;
        }
        Attributes(element, rule);
        Classes(element, rule);
        Content(element, rule);
        for (var node = element.FirstNode; node is not null; node = node.NextNode)
        {
            if (node is XElement child)
            {
                Element(child, depth + 1);
            }
        }
    }

    void Attributes(XElement element, ElementRule rule)
    {
        for (var attribute = element.FirstAttribute; attribute is not null; attribute = attribute.NextAttribute)
        {
            if (attribute.IsNamespaceDeclaration)
            {
                continue;
            }

            var name = attribute.Name.LocalName;
            if (!Vocabulary.GlobalAttributes.Contains(name) && !rule.Attributes.Contains(name))
            {
                Report(element, Sentence.Of("paper/template.value.no-attribute", ("element", rule.Name), ("name", name)));
            }
            else if (name is "colspan" or "rowspan" && !IsCount(attribute.Value))
            {
                Report(element, Sentence.Of("paper/template.value.span", ("name", name), ("most", MaximumSpan)));
            }
            else if (name == "scope" && attribute.Value is not ("col" or "row"))
            {
                Report(element, Sentence.Of("paper/template.value.scope"));
            }
            else if (name.StartsWith("data-", StringComparison.Ordinal) && !TemplateLength.IsValid(attribute.Value))
            {
                Report(element, Sentence.Of("paper/template.value.length", ("name", name)));
            }
            else if (name == "href" && !IsSafeAddress(attribute.Value))
            {
                Report(element, Sentence.Of("paper/template.value.link"));
            }
        }
    }

    void Classes(XElement element, ElementRule rule)
    {
        foreach (var cssClass in element.FirstAttribute is null ? [] : element.Classes())
        {
            if (Vocabulary.Knows(rule, cssClass))
            {
                continue;
            }

            Report(element, Sentence.Of("paper/template.value.no-class", ("element", rule.Name), ("name", cssClass)));
        }
    }

    void Content(XElement element, ElementRule rule)
    {
        var blocks = element.Elements().Any(child => Vocabulary.Blocks.Contains(child.Name.LocalName));
        var fields = rule.Name == "div" && element.Parent?.Name.LocalName == "dl";
        foreach (var child in element.Elements().Where(c => Vocabulary.Elements.ContainsKey(c.Name.LocalName)))
        {
            var name = child.Name.LocalName;
            var fits = rule.Holds switch
            {
                _ when fields => name is "dt" or "dd",
                Holds.Nothing => false,
                Holds.Text => Vocabulary.Inline.Contains(name),
                Holds.Blocks => Vocabulary.Blocks.Contains(name),
                Holds.TextOrBlocks => Vocabulary.Blocks.Contains(name) || Vocabulary.Inline.Contains(name) && !blocks,
                _ => rule.Children.Contains(name),
            };
            if (!fits)
            {
                Report(child, Sentence.Of("paper/template.value.element-here", ("name", name), ("element", rule.Name)));
            }
        }

        var text = rule.Holds is Holds.Text || rule.Holds is Holds.TextOrBlocks && !blocks && !fields;
        if (!text && element.Nodes().OfType<XText>().FirstOrDefault(t => !string.IsNullOrWhiteSpace(t.Value)) is { } loose)
        {
            Report(loose, Sentence.Of("paper/template.value.text-here", ("element", rule.Name)));
        }
        if (rule.Name == "figure")
        {
            Figure(element);
        }

        if (rule.Name == "table" && !element.Elements().Any(e => e.Name.LocalName == "tbody"))
        {
            Report(element, Sentence.Of("paper/template.value.table"));
        }
    }

    /// <summary>A figure without an alternative text is a fault.</summary>
    void Figure(XElement figure)
    {
        if (figure.Elements().FirstOrDefault(e => e.Is("svg")) is not { } svg)
        {
            Report(figure, Sentence.Of("paper/template.value.figure"));
        }
        else if (AlternativeText.Of(figure, svg).Length == 0)
        {
            Report(figure, Sentence.Of("paper/template.value.figure-words"));
        }
    }

    void Report(XObject node, Sentence reason) => _faults.Add(new TemplateFault(_page.Place(node), reason));

    static bool IsCount(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count is >= 1 and <= MaximumSpan;

    /// <summary>No scripts, no data addresses: only what a reader expects behind a link.</summary>
    static bool IsSafeAddress(string address)
    {
        if (
            address.StartsWith("https://", StringComparison.OrdinalIgnoreCase)
            || address.StartsWith("http://", StringComparison.OrdinalIgnoreCase)
        )
        {
            return true;
        }

        if (address.StartsWith("mailto:", StringComparison.OrdinalIgnoreCase))
        {
            return true;
        }

        return address.Length > 0
            && !address.Contains(':', StringComparison.Ordinal)
            && !address.StartsWith("//", StringComparison.Ordinal);
    }
}
