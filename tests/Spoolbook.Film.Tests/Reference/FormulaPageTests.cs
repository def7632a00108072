namespace Spoolbook.Film.Tests.Reference;

public class FormulaPageTests
{
    static string Here => AppContext.BaseDirectory;

    [Fact]
    public void The_reference_page_says_what_the_doc_comments_say()
    {
        var written = FormulaPage.Write(DocComments.Of(Path.Combine(Here, "Spoolbook.Film.xml")));

        ReferencePage.Holds(written, "Spoolbook.Film", "FORMULAS.md", "reference-film");
    }

    [Fact]
    public void Every_public_type_has_a_place_on_the_page()
    {
        var written = FormulaPage.Write(DocComments.Of(Path.Combine(Here, "Spoolbook.Film.xml")));
        var missing = FormulaPage
            .Types.Select(type => DocNames.Short("T:" + type.FullName))
            .Where(name => !written.Contains($"## {name}\n", StringComparison.Ordinal));

        Assert.Empty(missing);
    }
}
