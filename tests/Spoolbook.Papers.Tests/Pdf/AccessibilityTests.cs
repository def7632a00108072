using System.Text;
using Spoolbook.Papers.Pdf;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Graphics.Operations;
using UglyToad.PdfPig.Graphics.Operations.MarkedContent;
using UglyToad.PdfPig.Graphics.Operations.PathPainting;
using UglyToad.PdfPig.Graphics.Operations.TextShowing;
using UglyToad.PdfPig.Tokens;

namespace Spoolbook.Papers.Tests.Pdf;

/// <summary>
/// The points of PDF/UA-1 (ISO 14289-1) that a program can see, one by one, read by a reader that is not ours. No validator
/// for them is to be had; what a person must judge (are the words of a picture good words?) stays with the template.
/// </summary>
public sealed class AccessibilityTests : IDisposable
{
    readonly PdfDocument _pdf = Printed.Read(Printed.Of(Article, new PageSetup(Paper.A4) { HeadLeft = "Lighthouse", Stamp = "DRAFT" }));

    public void Dispose() => _pdf.Dispose();

    [Fact] // 5: the claim, in the metadata
    public void The_file_says_what_it_is()
    {
        Assert.True(_pdf.TryGetXmpMetadata(out var metadata));
        string xmp = Encoding.UTF8.GetString(metadata.GetXmlBytes());
        Assert.Contains("<pdfuaid:part>1</pdfuaid:part>", xmp, StringComparison.Ordinal);
        Assert.Contains("Camera report R03", xmp, StringComparison.Ordinal);
    }

    [Fact] // 7.1: title shown in place of the file's name; tagged; 7.2: language
    public void The_document_shows_its_title_and_names_its_language()
    {
        Assert.Equal(BooleanToken.True, Dictionary(Catalog, "ViewerPreferences").Data["DisplayDocTitle"]);
        Assert.Equal(BooleanToken.True, Dictionary(Catalog, "MarkInfo").Data["Marked"]);
        Assert.Equal("en", ((HexToken)Catalog.Data["Lang"]).Data);
    }

    [Fact] // 7.1: all content is real content or artifact, and neither lies within the other
    public void Everything_drawn_is_either_read_or_furniture()
    {
        foreach (var page in _pdf.GetPages())
        {
            bool open = false;
            foreach (var operation in page.Operations)
            {
                if (operation is BeginMarkedContent or BeginMarkedContentWithProperties)
                {
                    Assert.False(open);
                    open = true;
                }
                else if (operation is EndMarkedContent)
                {
                    Assert.True(open);
                    open = false;
                }
                else if (Draws(operation))
                {
                    Assert.True(open, $"{operation} on page {page.Number} stands outside");
                }
            }
            Assert.False(open);
        }
    }

    [Fact] // 7.1, 14.7.4 of ISO 32000-1: each piece of content leads to its element and back
    public void Every_piece_of_content_belongs_to_one_element()
    {
        var reached = Elements().SelectMany(element => Children(element).Select(child => (element, child)))
            .Where(entry => entry.child is NumericToken or DictionaryToken)
            .Count(entry => entry.child is NumericToken || ((DictionaryToken)entry.child).Data.ContainsKey("MCID"));
        int marked = _pdf.GetPages().Sum(page => page.Operations.OfType<BeginMarkedContentWithProperties>().Count());
        Assert.Equal(marked, reached);
    }

    [Fact] // 7.4.2: headings begin at the first level and skip none
    public void Headings_skip_no_level()
    {
        var levels = Elements().Select(Tag).Where(tag => tag.Length == 2 && tag[0] == 'H').Select(tag => tag[1] - '0').ToList();
        Assert.Equal([1, 2, 2, 3, 2], levels);
    }

    [Fact] // 7.3: pictures have words and a place; 7.5: head cells say what they head; 7.6: lists are built as lists
    public void Pictures_tables_and_lists_are_told_in_full()
    {
        var figure = Assert.Single(Elements(), e => Tag(e) == "Figure");
        Assert.Equal("The strip of the roll", ((HexToken)figure.Data["Alt"]).Data);
        Assert.Equal(4, ((ArrayToken)Dictionary(figure, "A").Data["BBox"]).Length);
        Assert.All(Elements().Where(e => Tag(e) == "TH"), e => Assert.Contains(((NameToken)Dictionary(e, "A").Data["Scope"]).Data, new[] { "Row", "Column" }));
        Assert.All(Elements().Where(e => Tag(e) == "L"), list => Assert.All(Inner(list), item => Assert.Equal("LI", Tag(item))));
        Assert.All(Elements().Where(e => Tag(e) == "LI"), item => Assert.Equal(["Lbl", "LBody"], Inner(item).Select(Tag)));
        Assert.All(Elements().Where(e => Tag(e) == "Table"), table => Assert.All(Inner(table), row => Assert.Contains(Tag(row), new[] { "Caption", "TR" })));
    }

    [Fact] // 7.18: links are in the structure, have words, and follow its order
    public void Links_are_part_of_the_text()
    {
        var link = Assert.Single(Elements(), e => Tag(e) == "Link");
        var reference = Assert.Single(Children(link).OfType<DictionaryToken>());
        var annotation = Resolve(reference.Data["Obj"]);
        Assert.True(annotation.Data.ContainsKey("StructParent"));
        Assert.True(annotation.Data.ContainsKey("Contents"));
        Assert.All(_pdf.GetPages().Where(page => page.Dictionary.Data.ContainsKey("Annots")), page => Assert.Equal("S", ((NameToken)page.Dictionary.Data["Tabs"]).Data));
    }

    const string Article = """
        <h1>Camera report</h1>
        <aside class="caution"><h3>Unprocessed film</h3><p>Keep it dark</p></aside>
        <h2>Takes</h2><h3>First day</h3>
        <table><caption>Roll R03</caption><thead><tr><th>Scene</th><th>Footage</th></tr></thead>
          <tbody><tr><th>7/B</th><td>10+10</td></tr><tr><td colspan="2"></td></tr></tbody></table>
        <h2>Rest</h2>
        <figure aria-label="The strip of the roll"><svg viewBox="0 0 100 10"><rect x="0" y="0" width="100" height="10"/></svg></figure>
        <ul class="checks"><li class="done">Gate checked</li><li>Cap on</li></ul><ol><li>One</li></ol>
        <dl class="fields"><div><dt>Roll</dt><dd></dd></div></dl>
        <p>See <a href="https://example.org/">the notes</a>.</p>
        """;

    DictionaryToken Catalog => _pdf.Structure.Catalog.CatalogDictionary;

    DictionaryToken Dictionary(DictionaryToken parent, string name) => Resolve(parent.Data[name]);

    DictionaryToken Resolve(IToken token) =>
        token is IndirectReferenceToken reference ? (DictionaryToken)_pdf.Structure.GetObject(reference.Data).Data : (DictionaryToken)token;

    static bool Draws(IGraphicsStateOperation operation) =>
        operation is ShowTextsWithPositioning or ShowText or StrokePath or FillPathNonZeroWinding or FillPathEvenOddRule or FillPathNonZeroWindingAndStroke or FillPathEvenOddRuleAndStroke;

    static string Tag(DictionaryToken element) => ((NameToken)element.Data["S"]).Data;

    static IEnumerable<IToken> Children(DictionaryToken element) =>
        element.Data.TryGetValue("K", out var kids) ? kids is ArrayToken array ? array.Data : [kids] : [];

    IEnumerable<DictionaryToken> Inner(DictionaryToken element) => Children(element).OfType<IndirectReferenceToken>().Select(Resolve);

    IEnumerable<DictionaryToken> Elements()
    {
        var waiting = new Stack<DictionaryToken>([Dictionary(Dictionary(Catalog, "StructTreeRoot"), "K")]);
        while (waiting.TryPop(out var element))
        {
            yield return element;
            foreach (var inner in Inner(element).Reverse()) waiting.Push(inner);
        }
    }
}
