using System.Text;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Graphics.Operations.MarkedContent;
using UglyToad.PdfPig.Tokens;

namespace Spoolbook.Papers.Tests.Typesetting;

/// <summary>
/// The points of PDF/UA-1 (ISO 14289-1) that a program can check, one by one, each with what breaks it. There is no
/// validator for them. What only a person can judge, such as good words for a picture, is left to the template.
/// </summary>
internal static class UniversalAccess
{
    public static readonly IReadOnlyList<(string Clause, string Point, Func<PdfDocument, TaggedPdf, IEnumerable<string>> Faults)> Points =
    [
        ("5", "the file claims it in its metadata, and has a title there", Claim),
        ("7.1", "the title is shown in place of the file's name, and the file says that it is tagged", Shown),
        ("7.2", "the language is named", (_, tags) =>
            tags.Catalog.Data.TryGetValue("Lang", out var lang) && Words(lang).Length >= 2 ? [] : ["no /Lang"]
        ),
        ("7.1", "all content is either read or furniture, and neither lies within the other", Marked),
        ("7.1", "each piece of content belongs to one element", Reached),
        ("7.4.2", "headings begin at the first level and skip none", Levels),
        ("7.3", "pictures have words and a place", Figures),
        ("7.5", "head cells say what they head, and every row is as wide as its table", Tables),
        ("7.6", "lists are built as lists", Lists),
        ("7.18", "links are in the structure, have words, and follow its order", Links),
        ("7.21", "every font is embedded and leads back to text", Fonts),
    ];

    static IEnumerable<string> Claim(PdfDocument pdf, TaggedPdf tags)
    {
        var xmp = pdf.TryGetXmpMetadata(out var metadata) ? Encoding.UTF8.GetString(metadata.GetXmlBytes()) : "";
        if (!xmp.Contains("<pdfuaid:part>1</pdfuaid:part>", StringComparison.Ordinal))
        {
            yield return "no pdfuaid:part in the metadata";
        }

        if (!xmp.Contains("<dc:title>", StringComparison.Ordinal))
        {
            yield return "no title in the metadata";
        }
    }

    static IEnumerable<string> Shown(PdfDocument pdf, TaggedPdf tags)
    {
        if (!BooleanToken.True.Equals(tags.Dictionary(tags.Catalog, "ViewerPreferences").Data["DisplayDocTitle"]))
        {
            yield return "DisplayDocTitle is not true";
        }

        if (!BooleanToken.True.Equals(tags.Dictionary(tags.Catalog, "MarkInfo").Data["Marked"]))
        {
            yield return "Marked is not true";
        }
    }

    static IEnumerable<string> Marked(PdfDocument pdf, TaggedPdf tags)
    {
        foreach (var page in tags.Pages)
        {
            var open = false;
            foreach (var operation in page.Operations)
            {
                var opens = operation is BeginMarkedContent or BeginMarkedContentWithProperties;
                var closes = operation is EndMarkedContent;
                if ((opens && open) || (closes && !open))
                {
                    yield return $"marks are nested on page {page.Number}";
                }

                if (TaggedPdf.Draws(operation) && !open)
                {
                    yield return $"{operation} on page {page.Number} stands outside";
                }

                open = opens || (open && !closes);
            }

            if (open)
            {
                yield return $"a mark stays open on page {page.Number}";
            }
        }
    }

    static IEnumerable<string> Reached(PdfDocument pdf, TaggedPdf tags)
    {
        var reached = tags.Elements()
            .SelectMany(TaggedPdf.Children)
            .Count(child => child is NumericToken || (child is DictionaryToken one && one.Data.ContainsKey("MCID")));
        var marked = tags.Pages.Sum(page => page.Operations.OfType<BeginMarkedContentWithProperties>().Count());
        if (marked != reached)
        {
            yield return $"{marked} pieces of content, {reached} reached from the structure";
        }
    }

    static IEnumerable<string> Levels(PdfDocument pdf, TaggedPdf tags)
    {
        var before = 0;
        foreach (
            var level in tags.Elements().Select(TaggedPdf.Tag).Where(tag => tag.Length == 2 && tag[0] == 'H').Select(tag => tag[1] - '0')
        )
        {
            if (level > before + 1)
            {
                yield return $"H{level} comes after H{before}";
            }

            before = level;
        }

        if (before == 0)
        {
            yield return "there is no heading";
        }
    }

    static IEnumerable<string> Figures(PdfDocument pdf, TaggedPdf tags)
    {
        foreach (var figure in Of(tags, "Figure"))
        {
            if (!figure.Data.TryGetValue("Alt", out var alt) || Words(alt).Trim().Length == 0)
            {
                yield return "a picture without words";
            }

            if (tags.Dictionary(figure, "A").Data["BBox"] is not ArrayToken { Length: 4 })
            {
                yield return "a picture without a place";
            }
        }
    }

    static IEnumerable<string> Tables(PdfDocument pdf, TaggedPdf tags)
    {
        foreach (var head in Of(tags, "TH"))
        {
            if (!head.Data.ContainsKey("A") || ((NameToken)tags.Dictionary(head, "A").Data["Scope"]).Data is not ("Row" or "Column"))
            {
                yield return "a head cell without scope";
            }
        }

        foreach (var table in Of(tags, "Table"))
        {
            var inner = tags.Inner(table).ToList();
            foreach (var row in inner.Where(row => TaggedPdf.Tag(row) is not ("Caption" or "TR")))
            {
                yield return $"{TaggedPdf.Tag(row)} in a table";
            }

            var widths = Widths(inner.Where(row => TaggedPdf.Tag(row) == "TR")).Distinct().ToList();
            if (widths.Count > 1)
            {
                yield return $"rows of {string.Join(" and ", widths)} columns in one table";
            }
        }

        // A cell that spans rows takes up room in those below.
        IEnumerable<int> Widths(IEnumerable<DictionaryToken> rows)
        {
            var hanging = new List<int>();
            foreach (var row in rows)
            {
                var cells = tags.Inner(row).Select(cell => (Columns: Span(cell, "ColSpan"), Rows: Span(cell, "RowSpan"))).ToList();
                yield return cells.Sum(cell => cell.Columns) + hanging.Count;
                hanging =
                [
                    .. hanging.Where(left => left > 1).Select(left => left - 1),
                    .. cells.Where(c => c.Rows > 1).SelectMany(c => Enumerable.Repeat(c.Rows - 1, c.Columns)),
                ];
            }
        }

        int Span(DictionaryToken cell, string name) =>
            cell.Data.ContainsKey("A") && tags.Dictionary(cell, "A").Data.TryGetValue(name, out var span) ? ((NumericToken)span).Int : 1;
    }

    static IEnumerable<string> Lists(PdfDocument pdf, TaggedPdf tags)
    {
        foreach (var odd in Of(tags, "L").SelectMany(tags.Inner).Where(item => TaggedPdf.Tag(item) != "LI"))
        {
            yield return $"{TaggedPdf.Tag(odd)} in a list";
        }

        foreach (var item in Of(tags, "LI").Where(item => !tags.Inner(item).Select(TaggedPdf.Tag).SequenceEqual(["Lbl", "LBody"])))
        {
            yield return "a list's item without label and body";
        }
    }

    static IEnumerable<string> Links(PdfDocument pdf, TaggedPdf tags)
    {
        foreach (var link in Of(tags, "Link"))
        {
            var annotation = tags.Resolve(
                TaggedPdf.Children(link).OfType<DictionaryToken>().Single(child => child.Data.ContainsKey("Obj")).Data["Obj"]
            );
            if (!annotation.Data.ContainsKey("StructParent"))
            {
                yield return "a link that does not lead back";
            }

            if (!annotation.Data.TryGetValue("Contents", out var words) || Words(words).Length == 0)
            {
                yield return "a link without words";
            }
        }

        foreach (var page in tags.Pages.Where(page => page.Dictionary.Data.ContainsKey("Annots")))
        {
            if (page.Dictionary.Data.GetValueOrDefault("Tabs") is not NameToken { Data: "S" })
            {
                yield return $"page {page.Number} has no order of links";
            }
        }
    }

    static IEnumerable<string> Fonts(PdfDocument pdf, TaggedPdf tags)
    {
        foreach (var page in tags.Pages)
        {
            var resources = page.Dictionary.Data.TryGetValue("Resources", out var found) ? tags.Resolve(found) : null;
            if (resources is null || !resources.Data.TryGetValue("Font", out var list))
            {
                continue;
            }

            foreach (var font in tags.Resolve(list).Data.Values.Select(tags.Resolve))
            {
                if (!font.Data.ContainsKey("ToUnicode"))
                {
                    yield return $"a font on page {page.Number} does not lead back to text";
                }

                var inner = tags.Resolve(((ArrayToken)font.Data["DescendantFonts"]).Data[0]);
                if (!tags.Dictionary(inner, "FontDescriptor").Data.ContainsKey("FontFile2"))
                {
                    yield return $"a font on page {page.Number} is not embedded";
                }
            }
        }
    }

    static IEnumerable<DictionaryToken> Of(TaggedPdf tags, string tag) => tags.Elements().Where(e => TaggedPdf.Tag(e) == tag);

    static string Words(IToken token) =>
        token is HexToken hex ? hex.Data
        : token is StringToken text ? text.Data
        : "";
}
