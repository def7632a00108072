namespace Spoolbook.Film.Tests.Reference;

public class FormulaPageTests
{
    const string Page = "FORMULAS.md";

    static string Here => AppContext.BaseDirectory;

    [Fact]
    public void The_reference_page_says_what_the_doc_comments_say()
    {
        var written = FormulaPage.Write(DocComments.Of(Path.Combine(Here, "Spoolbook.Film.xml")));

        // Left for scripts/reference-film to take over: a test only looks.
        Directory.CreateDirectory(Path.Combine(Here, "received"));
        File.WriteAllText(Path.Combine(Here, "received", Page), written);

        var kept = File.ReadAllText(Path.Combine(Root(), "src", "Spoolbook.Film", Page));
        Assert.True(kept == written, $"src/Spoolbook.Film/{Page} is out of date: run scripts/reference-film");
    }

    [Fact]
    public void Every_public_type_has_a_place_on_the_page()
    {
        var written = FormulaPage.Write(DocComments.Of(Path.Combine(Here, "Spoolbook.Film.xml")));
        var missing = typeof(Gauge).Assembly.GetExportedTypes()
            .Select(type => DocNames.Short("T:" + type.FullName))
            .Where(name => !written.Contains($"## {name}\n", StringComparison.Ordinal));

        Assert.Empty(missing);
    }

    static string Root()
    {
        var folder = Here;
        while (!File.Exists(Path.Combine(folder, "Reports.sln")))
        {
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("The tests do not run inside the repository.");
        }

        return folder;
    }
}
