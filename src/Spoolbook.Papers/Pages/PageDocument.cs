using System.Text;
using System.Xml;
using System.Xml.Linq;

namespace Spoolbook.Papers.Pages;

/// <summary>A page in the vocabulary: well-formed, every element known. Web page and PDF are made from the same tree.</summary>
public sealed class PageDocument
{
    static readonly HashSet<string> Void = ["br", "hr", "col"];

    readonly PageOutput _output;

    internal PageDocument(XElement root, PageOutput output)
    {
        Root = root;
        _output = output;
    }

    public XElement Root { get; }

    /// <summary>The place in the template that printed an element or a text.</summary>
    public TemplatePlace Place(XObject node)
    {
        IXmlLineInfo? info = node;
        while (info is XObject at && !info.HasLineInfo())
        {
            info = at.Parent;
        }

        if (info is null)
        {
            return new TemplatePlace("", 1, 1);
        }

        var (line, column) = (info.LineNumber, info.LinePosition);
        // A text starts right after a tag; messages are about the words after the blanks.
        var blanks = node is XText text ? text.Value[..(text.Value.Length - text.Value.TrimStart().Length)] : "";
        foreach (var c in blanks)
        {
            (line, column) = c == '\n' ? (line + 1, 1) : (line, column + 1);
        }

        return _output.Place(line, column);
    }

    /// <summary>
    /// The article as HTML: line breaks of a value as br elements, and an end tag on every empty element but br, hr and
    /// col.
    /// </summary>
    /// <param name="finish">Changes the copy before it is written; null for no changes.</param>
    public string ToHtml(Action<XElement>? finish = null)
    {
        var copy = new XElement(Root);
        finish?.Invoke(copy);
        foreach (
            var broken in copy.DescendantNodes()
                .OfType<XText>()
                .Where(t => t.Value.Contains(Escaping.LineBreak, StringComparison.Ordinal))
                .ToList()
        )
        {
            broken.ReplaceWith(Broken(broken).ToList());
        }
        foreach (var element in copy.DescendantsAndSelf())
        {
            if (
                element.IsEmpty
                && !Void.Contains(element.Name.LocalName)
                && !element.AncestorsAndSelf().Any(e => e.Name.LocalName == "svg")
            )
            {
                element.Value = "";
            }
        }
        var text = new StringBuilder();
        var settings = new XmlWriterSettings { OmitXmlDeclaration = true, NewLineHandling = NewLineHandling.None };
        using (var writer = XmlWriter.Create(text, settings))
        {
            copy.Save(writer);
        }

        return text.ToString();
    }

    static IEnumerable<XNode> Broken(XText text)
    {
        var lines = text.Value.Split(Escaping.LineBreak);
        var picture = text.Ancestors().Any(e => e.Is("svg"));
        for (var i = 0; i < lines.Length; i++)
        {
            if (i > 0)
            {
                yield return picture ? new XText(" ") : new XElement(text.Parent!.Name.Namespace + "br");
            }

            yield return new XText(lines[i]);
        }
    }
}
