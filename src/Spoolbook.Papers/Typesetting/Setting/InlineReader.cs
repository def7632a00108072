using System.Globalization;
using System.Text;
using System.Xml.Linq;
using Spoolbook.Papers.Pages;
using Spoolbook.Pdf.Structure;

namespace Spoolbook.Papers.Typesetting.Setting;

/// <summary>Turns the text and inline elements of a block into runs: blanks folded, styles resolved, warnings noted.</summary>
sealed class InlineReader(WarningBook warnings)
{
    readonly List<InlineRun> _runs = [];

    // At the start of a block or line, and after a blank, further blanks are dropped.
    bool _afterBlank = true;

    public static IReadOnlyList<InlineRun> Read(IEnumerable<XNode> nodes, TextStyle style, StructureElement owner, WarningBook warnings)
    {
        var reader = new InlineReader(warnings);
        foreach (var node in nodes)
        {
            reader.Node(node, style, owner, null);
        }

        reader.TrimEnd();
        return reader._runs;
    }

    void Node(XNode node, TextStyle style, StructureElement owner, string? address)
    {
        switch (node)
        {
            case XText text:
                Text(Shortened(warnings.Clean(text), text.Parent!, style), style, owner, address);
                break;
            case XElement element when element.Is("br"):
                Break(style, owner);
                break;
            case XElement element when !element.HasClass("only-screen"):
                var link = element.Is("a") ? OnPaper(element) : null;
                var inner = link is null ? owner : new StructureElement("Link", owner);
                foreach (var child in element.Nodes())
                {
                    Node(child, Styles.Inline(element, style), inner, link ?? address);
                }
                break;
        }
    }

    /// <summary>On a label that is too full, a text that may be shortened ends in an ellipsis.</summary>
    static string Shortened(string text, XElement element, TextStyle style) =>
        style.Fit is { Letters: { } most }
        && element.Is("span")
        && element.HasClass("fit")
        && new StringInfo(text) is var letters
        && letters.LengthInTextElements > most
            ? letters.SubstringByTextElements(0, most).TrimEnd(' ', ',') + "…"
            : text;

    void Text(string text, TextStyle style, StructureElement owner, string? address)
    {
        var folded = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            if (c == Escaping.LineBreak)
            {
                Flush(folded, style, owner, address);
                Break(style, owner);
            }
            else if (c is ' ' or '\n' or '\t' or '\r')
            {
                // Words in a box stay together, and so do those that a template wants so: their blanks are made unbreakable.
                if (!_afterBlank)
                {
                    folded.Append(style is { Decoration: Decoration.None, OneLine: false } ? ' ' : '\u00A0');
                }

                _afterBlank = true;
            }
            else
            {
                folded.Append(c);
                _afterBlank = false;
            }
        }
        Flush(folded, style, owner, address);
    }

    void Flush(StringBuilder text, TextStyle style, StructureElement owner, string? address)
    {
        if (text.Length == 0)
        {
            return;
        }

        _runs.Add(new InlineRun(text.ToString(), style, owner) { Address = address });
        text.Clear();
    }

    void Break(TextStyle style, StructureElement owner)
    {
        TrimEnd();
        _runs.Add(new InlineRun("", style, owner) { Break = true });
        _afterBlank = true;
    }

    void TrimEnd()
    {
        if (_runs.Count == 0 || _runs[^1].Break)
        {
            return;
        }

        var trimmed = _runs[^1].Text.TrimEnd(' ');
        if (trimmed.Length == 0)
        {
            _runs.RemoveAt(_runs.Count - 1);
        }
        else
        {
            _runs[^1] = _runs[^1] with { Text = trimmed };
        }
    }

    /// <summary>
    /// Where a link leads on paper: to a place that is on paper too, to the PDF beside this one, or out. Null for a place
    /// that only the web page has.
    /// </summary>
    string? OnPaper(XElement link) =>
        (string?)link.Attribute("href") switch
        {
            ['#', .. var id] => warnings.IsPrinted(id) ? "#" + id : null,
            { } address when address.Contains(':', StringComparison.Ordinal) => address,
            { } page when page.Split('#') is var parts && parts[0].EndsWith(".html", StringComparison.Ordinal) => parts[0][..^4]
                + "pdf"
                + (parts.Length > 1 ? "#" + parts[1] : ""),
            _ => null,
        };
}
