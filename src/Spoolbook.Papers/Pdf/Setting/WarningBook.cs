using System.Collections.Immutable;
using System.Xml.Linq;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Pdf.Fonts;

namespace Spoolbook.Papers.Pdf.Setting;

/// <summary>Collects what could not be drawn as it was written, each thing once for each place.</summary>
sealed class WarningBook(PageDocument document)
{
    readonly HashSet<PageWarning> _known = [];
    readonly List<PageWarning> _warnings = [];

    public ImmutableArray<PageWarning> Warnings => [.. _warnings];

    public string Clean(XText text) => TextCleaner.Clean(
        text.Value,
        missing => Note(PageWarningKind.MissingGlyph, missing, text.Value, text),
        () => Note(PageWarningKind.RightToLeft, "", text.Value, text));

    /// <summary>Cleans text that came with the page's set-up and stands in no template.</summary>
    public string Clean(string text) => TextCleaner.Clean(
        text,
        missing => Note(PageWarningKind.MissingGlyph, missing, text, document.Root),
        () => Note(PageWarningKind.RightToLeft, "", text, document.Root));

    public void Note(PageWarningKind kind, string subject, string near, XObject node)
    {
        const int Enough = 60;
        string excerpt = near.Trim();
        if (excerpt.Length > Enough) excerpt = excerpt[..Enough] + "…";
        var warning = new PageWarning(kind, subject, excerpt, document.Place(node));
        if (_known.Add(warning)) _warnings.Add(warning);
    }
}
