using System.Globalization;
using System.Xml.Linq;

namespace Spoolbook.Papers.Pages;

/// <summary>Finds what a page has beyond the vocabulary, so that nothing is guessed at or left out.</summary>
sealed class VocabularyCheck
{
    const int MaximumDepth = 40;
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
            check.Report(page.Root, "a page is one <article>");
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
            Report(element, $"more than {MaximumDepth} elements stand inside one another");
            return;
        }
        if (!Vocabulary.Elements.TryGetValue(name, out var rule) || !Namespaces.Contains(element.Name.NamespaceName))
        {
            Report(element, $"<{name}> is not in the vocabulary");
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
        foreach (var child in element.Elements())
        {
            Element(child, depth + 1);
        }
    }

    void Attributes(XElement element, ElementRule rule)
    {
        foreach (var attribute in element.Attributes().Where(a => !a.IsNamespaceDeclaration))
        {
            var name = attribute.Name.LocalName;
            if (!Vocabulary.GlobalAttributes.Contains(name) && !rule.Attributes.Contains(name))
            {
                Report(element, $"<{rule.Name}> has no attribute '{name}'");
            }
            else if (name is "colspan" or "rowspan" && !IsCount(attribute.Value))
            {
                Report(element, $"{name} must be a whole number from 1 to {MaximumSpan}");
            }
            else if (name == "scope" && attribute.Value is not ("col" or "row"))
            {
                Report(element, "scope must be 'col' or 'row'");
            }
            else if (name.StartsWith("data-", StringComparison.Ordinal) && !TemplateLength.IsValid(attribute.Value))
            {
                Report(element, $"{name} must be a number, or a length such as 12pt, 10mm or 0.5in");
            }
            else if (name == "href" && !IsSafeAddress(attribute.Value))
            {
                Report(element, "a link may lead to http:, https:, mailto:, a file beside the page or a place on it");
            }
        }
    }

    void Classes(XElement element, ElementRule rule)
    {
        foreach (var cssClass in element.Classes().Where(c => !Vocabulary.Knows(rule, c)))
        {
            Report(element, $"<{rule.Name}> has no class '{cssClass}'");
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
                Report(child, $"<{name}> cannot stand here in <{rule.Name}>");
            }
        }

        var text = rule.Holds is Holds.Text || rule.Holds is Holds.TextOrBlocks && !blocks && !fields;
        if (!text && element.Nodes().OfType<XText>().FirstOrDefault(t => !string.IsNullOrWhiteSpace(t.Value)) is { } loose)
        {
            Report(loose, $"text cannot stand here in <{rule.Name}>; put it into a <p>");
        }
        if (rule.Name == "figure")
        {
            Figure(element);
        }

        if (rule.Name == "table" && !element.Elements().Any(e => e.Name.LocalName == "tbody"))
        {
            Report(element, "a <table> holds a <tbody>");
        }
    }

    /// <summary>A figure without an alternative text is a fault.</summary>
    void Figure(XElement figure)
    {
        if (figure.Elements().FirstOrDefault(e => e.Is("svg")) is not { } svg)
        {
            Report(figure, "a <figure> holds an <svg>");
        }
        else if (AlternativeText.Of(figure, svg).Length == 0)
        {
            Report(figure, "a <figure> needs words for what it shows: aria-label, or a <title> in its <svg>, or a <figcaption>");
        }
    }

    void Report(XObject node, string reason) => _faults.Add(new TemplateFault(_page.Place(node), reason));

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
