using System.Buffers;
using System.Text;
using System.Xml;
using System.Xml.Linq;

namespace Spoolbook.Papers.Pages;

/// <summary>A page in the vocabulary: well-formed, every element known. Web page and PDF are made from the same tree.</summary>
public sealed class PageDocument
{
    static readonly HashSet<string> Void = ["br", "hr", "col"];

    // What ends a line somewhere, beside the one that ends it everywhere.
    static readonly SearchValues<char> _strangeLineEnds = SearchValues.Create("\r\f\u0085\u2028\u2029");

    static readonly XmlWriterSettings _plain = new()
    {
        OmitXmlDeclaration = true,
        NewLineHandling = NewLineHandling.None,
        Encoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false),
    };

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
    /// The article as HTML: line breaks of a value as br elements, and an end tag on every empty element but br, hr and col. The tree
    /// itself is changed for it, since a copy of a long page takes more memory than all else; nothing reads it afterwards.
    /// </summary>
    public string ToHtml()
    {
        var text = new StringBuilder();
        using (var writer = XmlWriter.Create(text, _plain))
        {
            Write(writer);
        }

        return text.ToString();
    }

    /// <summary>Writes the article as <see cref="ToHtml"/> gives it, in UTF-8 without a mark at the start.</summary>
    /// <param name="finish">Changes the tree before it is written.</param>
    public void WriteHtml(Stream to, Action<XElement> finish)
    {
        finish(Root);
        using var writer = XmlWriter.Create(to, _plain);
        Write(writer);
    }

    void Write(XmlWriter writer)
    {
        foreach (var text in Root.DescendantNodes().OfType<XText>().ToList())
        {
            if (text.Value.Contains(Escaping.LineBreak, StringComparison.Ordinal))
            {
                text.ReplaceWith(Broken(text).ToList());
            }
            else if (text.Value.AsSpan().ContainsAny(_strangeLineEnds))
            {
                text.Value = text.Value.ReplaceLineEndings("\n");
            }
        }

        foreach (var element in Root.DescendantsAndSelf())
        {
            if (
                element.IsEmpty
                && !Void.Contains(element.Name.LocalName)
                && !element.AncestorsAndSelf().Any(e => e.Name.LocalName == "svg")
            )
            {
                element.Value = "";
            }

            foreach (var attribute in element.Attributes().Where(a => a.Value.AsSpan().ContainsAny(_strangeLineEnds)))
            {
                attribute.Value = attribute.Value.ReplaceLineEndings("\n");
            }
        }

        Root.Save(writer);
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

            yield return new XText(lines[i].ReplaceLineEndings("\n"));
        }
    }
}
