using System.Collections.Immutable;
using System.Xml.Linq;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting.Fonts;
using Spoolbook.Papers.Typesetting.Setup;

namespace Spoolbook.Papers.Typesetting.Setting;

/// <summary>Collects what could not be drawn as written, each text once for each place.</summary>
sealed class WarningBook(PageDocument document)
{
    readonly HashSet<(PageWarningKind, string, XObject)> _known = [];
    readonly List<PageWarning> _warnings = [];
    HashSet<string>? _printed;

    public ImmutableArray<PageWarning> Warnings => [.. _warnings];

    /// <summary>Whether a place that links lead to is on paper, and not on the screen alone.</summary>
    public bool IsPrinted(string id)
    {
        _printed ??=
        [
            .. document
                .Root.Descendants()
                .Where(e => e.Attribute("id") is not null && !e.AncestorsAndSelf().Any(around => around.HasClass("only-screen")))
                .Select(e => (string)e.Attribute("id")!),
        ];
        return _printed.Contains(id);
    }

    public string Clean(XText text) => Clean(text.Value, text);

    /// <summary>Cleans text from the page set-up, which is in no template.</summary>
    public string Clean(string text) => Clean(text, document.Root);

    public void Note(PageWarningKind kind, string text, XObject node) => Note(kind, text, node, []);

    /// <summary>A text that a label shortens to so many letters; the words before it say what it is.</summary>
    public void Shortened(XElement text, int letters)
    {
        if (!_known.Add((PageWarningKind.Shortened, text.Value, text)))
        {
            return;
        }

        var before = (text.PreviousNode as XText)?.Value.TrimStart(' ', '\n', '·') ?? "";
        _warnings.Add(
            new PageWarning(PageWarningKind.Shortened, text.Value.Trim(), document.Place(text)) { Before = before, Letters = letters }
        );
    }

    string Clean(string text, XObject node)
    {
        var clean = TextCleaner.Clean(text);
        if (clean.Missing.Length > 0)
        {
            Note(PageWarningKind.MissingGlyph, text, node, clean.Missing);
        }

        if (clean.Turns)
        {
            Note(PageWarningKind.RightToLeft, text, node, []);
        }

        return clean.Text;
    }

    void Note(PageWarningKind kind, string text, XObject node, ImmutableArray<string> missing)
    {
        if (_known.Add((kind, text, node)))
        {
            _warnings.Add(new PageWarning(kind, text.Trim(), document.Place(node)) { Missing = missing });
        }
    }
}
