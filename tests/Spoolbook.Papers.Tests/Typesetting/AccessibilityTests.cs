using Spoolbook.Papers.Typesetting.Setup;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Tokens;

namespace Spoolbook.Papers.Tests.Typesetting;

/// <summary>One article that uses everything once, held to each point of PDF/UA-1 and to its own words.</summary>
public sealed class AccessibilityTests : IDisposable
{
    readonly PdfDocument _pdf = Printed.Read(Printed.Of(Article, new PageSetup(Paper.A4) { HeadLeft = "Lighthouse", Stamp = "DRAFT" }));
    readonly TaggedPdf _tags;

    public AccessibilityTests() => _tags = new TaggedPdf(_pdf);

    public void Dispose() => _pdf.Dispose();

    public static TheoryData<string> Points => [.. UniversalAccess.Points.Select(Name)];

    [Theory]
    [MemberData(nameof(Points))]
    public void The_point_holds(string name) =>
        Assert.Empty(UniversalAccess.Points.Single(point => Name(point) == name).Faults(_pdf, _tags));

    [Fact]
    public void Headings_are_in_their_order() =>
        Assert.Equal(["H1", "H2", "H2", "H3", "H2"], Tags().Where(tag => tag.Length == 2 && tag[0] == 'H'));

    [Fact]
    public void A_picture_has_the_words_it_was_given()
    {
        var figure = Assert.Single(_tags.Elements(), e => TaggedPdf.Tag(e) == "Figure");
        Assert.Equal("The strip of the roll", ((HexToken)figure.Data["Alt"]).Data);
    }

    [Fact]
    public void What_is_read_aloud_is_the_article_in_its_order() =>
        Assert.Equal(
            "Camera report Unprocessed film Keep it dark Takes First day Roll R03 Scene Footage 7/B 10+10 Rest Gate checked Cap on 1. "
                + "One Roll See the notes .",
            string.Join(' ', _tags.Read().Split(' ', StringSplitOptions.RemoveEmptyEntries))
        );

    static string Name((string Clause, string Point, Func<PdfDocument, TaggedPdf, IEnumerable<string>>) point) =>
        $"{point.Clause}: {point.Point}";

    IEnumerable<string> Tags() => _tags.Elements().Select(TaggedPdf.Tag);

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
}
