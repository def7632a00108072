using System.Globalization;
using System.Text;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics.Operations;
using UglyToad.PdfPig.Graphics.Operations.PathPainting;
using UglyToad.PdfPig.Graphics.Operations.TextShowing;
using UglyToad.PdfPig.Tokens;

namespace Spoolbook.Papers.Tests.Typesetting;

/// <summary>A PDF as a screen reader sees it: its structure tree, through an outside reader (PdfPig).</summary>
internal sealed class TaggedPdf(PdfDocument pdf)
{
    readonly List<Page> _pages = [.. pdf.GetPages()];

    public IReadOnlyList<Page> Pages => _pages;

    public DictionaryToken Catalog => pdf.Structure.Catalog.CatalogDictionary;

    public DictionaryToken Dictionary(DictionaryToken parent, string name) => Resolve(parent.Data[name]);

    public DictionaryToken Resolve(IToken token) =>
        token is IndirectReferenceToken reference ? (DictionaryToken)pdf.Structure.GetObject(reference.Data).Data : (DictionaryToken)token;

    public static string Tag(DictionaryToken element) => ((NameToken)element.Data["S"]).Data;

    public static IEnumerable<IToken> Children(DictionaryToken element) =>
        element.Data.TryGetValue("K", out var kids)
            ? kids is ArrayToken array
                ? array.Data
                : [kids]
            : [];

    public IEnumerable<DictionaryToken> Inner(DictionaryToken element) =>
        Children(element).OfType<IndirectReferenceToken>().Select(Resolve);

    public DictionaryToken Root => Dictionary(Dictionary(Catalog, "StructTreeRoot"), "K");

    /// <summary>Every element in reading order, without those below one of <paramref name="closed"/>.</summary>
    public IEnumerable<DictionaryToken> Elements(params string[] closed)
    {
        var waiting = new Stack<DictionaryToken>([Root]);
        while (waiting.TryPop(out var element))
        {
            if (closed.Contains(Tag(element)))
            {
                continue;
            }

            yield return element;
            foreach (var inner in Inner(element).Reverse())
            {
                waiting.Push(inner);
            }
        }
    }

    /// <summary>The words read aloud, in order: those of every element but pictures and list marks.</summary>
    public string Read()
    {
        var said = new StringBuilder();
        var spoken = new Dictionary<(int Page, int Mark), string>();
        var numbers = new Dictionary<IndirectReference, int>();
        foreach (var page in _pages)
        {
            foreach (var content in page.GetMarkedContents().Where(c => c.MarkedContentIdentifier >= 0))
            {
                spoken[(page.Number, content.MarkedContentIdentifier)] = Joined(content.Letters);
            }
        }

        foreach (var leaf in Leaves(Catalog.Data["Pages"]))
        {
            numbers.Add(leaf, numbers.Count + 1);
        }

        Say(Root, null);
        return said.ToString();

        void Say(DictionaryToken element, int? page)
        {
            if (Tag(element) is "Figure")
            {
                return;
            }

            page = PageOf(element) ?? page;
            foreach (var child in Children(element))
            {
                switch (child)
                {
                    case NumericToken mark:
                        said.Append(spoken.GetValueOrDefault((page!.Value, mark.Int)));
                        break;
                    case DictionaryToken one when one.Data.TryGetValue("MCID", out var mark):
                        said.Append(spoken.GetValueOrDefault(((PageOf(one) ?? page)!.Value, ((NumericToken)mark).Int)));
                        break;
                    case IndirectReferenceToken inner:
                        Say(Resolve(inner), page);
                        break;
                }
            }

            said.Append(' ');
        }

        int? PageOf(DictionaryToken element) =>
            element.Data.TryGetValue("Pg", out var token) && token is IndirectReferenceToken reference ? numbers[reference.Data] : null;
    }

    /// <summary>This reader returns an accent over a letter as both together, after the letter.</summary>
    static string Joined(IEnumerable<Letter> letters)
    {
        var text = new StringBuilder();
        foreach (var value in letters.Select(l => l.Value))
        {
            var again =
                value.Length > 1
                && char.GetUnicodeCategory(value[^1]) == UnicodeCategory.NonSpacingMark
                && text.ToString().EndsWith(value[..^1], StringComparison.Ordinal);
            text.Append(again ? value[^1..] : value);
        }

        return text.ToString();
    }

    IEnumerable<IndirectReference> Leaves(IToken node) =>
        Resolve(node).Data.TryGetValue("Kids", out var kids)
            ? ((ArrayToken)kids).Data.SelectMany(Leaves)
            : [((IndirectReferenceToken)node).Data];

    public static bool Draws(IGraphicsStateOperation operation) =>
        operation
            is ShowTextsWithPositioning
                or ShowText
                or StrokePath
                or FillPathNonZeroWinding
                or FillPathEvenOddRule
                or FillPathNonZeroWindingAndStroke
                or FillPathEvenOddRuleAndStroke;
}
