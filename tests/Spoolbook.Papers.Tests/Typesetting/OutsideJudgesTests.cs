using System.Text.RegularExpressions;
using Spoolbook.Papers.Typesetting.Setup;

namespace Spoolbook.Papers.Tests.Typesetting;

/// <summary>Outside programs check one paper that uses everything once.</summary>
public sealed partial class OutsideJudgesTests : IDisposable
{
    const string Preflight = "/usr/share/java/preflight.jar";

    readonly string _folder = Directory.CreateTempSubdirectory("spoolbook").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [ToolFact("qpdf")]
    public void Qpdf_finds_nothing_wrong()
    {
        var (status, output) = Tools.Run("qpdf", "--check", Paper());
        Assert.Equal(0, status);
        Assert.DoesNotContain("WARNING", output, StringComparison.OrdinalIgnoreCase);
    }

    [ToolFact("mutool")]
    public void Mutool_draws_every_page_without_a_warning()
    {
        var (status, output) = Tools.Run("mutool", "draw", "-F", "txt", "-o", Path.Combine(_folder, "out.txt"), Paper());
        Assert.Equal(0, status);
        // Debian builds mutool without colour management, and it warns about every file.
        output = output.Replace("warning: ICC support is not available", "", StringComparison.Ordinal);
        Assert.DoesNotContain("warning", output, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("error", output, StringComparison.OrdinalIgnoreCase);
    }

    [ToolFact("pdffonts")]
    public void Every_font_is_embedded_subset_and_leads_back_to_text()
    {
        var fonts = Tools.Run("pdffonts", Paper()).Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(2).ToList();
        Assert.NotEmpty(fonts);
        Assert.All(fonts, font => Assert.Matches(@"Inter-\w+\s+CID TrueType\s+Identity-H\s+yes yes yes", font));
    }

    [ToolFact(Preflight)]
    public void A_validator_finds_the_paper_fit_for_an_archive()
    {
        string[] jars = ["preflight", "pdfbox2", "xmpbox", "fontbox2", "commons-logging", "commons-io", "jaxb-api", "javax.activation"];
        var path = string.Join(':', jars.Select(jar => $"/usr/share/java/{jar}.jar"));
        var (_, output) = Tools.Run("java", "-cp", path, "org.apache.pdfbox.preflight.Validator_A1b", Paper());
        Assert.Contains("is a valid PDF/A-1b file", output, StringComparison.Ordinal);
    }

    [ToolFact("pdfinfo")]
    public void The_structure_is_what_the_page_says()
    {
        var output = Tools.Run("pdfinfo", "-struct", Paper()).Output;
        var tags = Line().Matches(output).Select(m => m.Value.TrimEnd().Replace(":", "", StringComparison.Ordinal));
        Assert.Equal(Expected.ReplaceLineEndings("\n").Trim(), string.Join('\n', tags).Trim());
    }

    [ToolFact("pdftotext")]
    public void Poppler_reads_the_text_in_order()
    {
        var (_, text) = Tools.Run("pdftotext", Paper(), "-");
        var folded = Blanks().Replace(text, " ");
        var at = -1;
        foreach (
            var word in new[]
            {
                "Camera report",
                "Roll",
                "R03",
                "Scene",
                "Footage",
                "7/B",
                "10+10",
                "7/C",
                "6+10",
                "Gate checked",
                "Keep it dark",
                "in-camera dissolve",
            }
        )
        {
            var found = folded.IndexOf(word, at + 1, StringComparison.Ordinal);
            Assert.True(found > at, $"'{word}' is not read after what stands before it: {folded}");
            at = found;
        }
    }

    [GeneratedRegex(@"(?m)^ *(Document|Sect|Div|H\d|P|L|LI|Lbl|LBody|Table|Caption|TR|TH|TD|Figure|Link)\b")]
    private static partial Regex Line();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();

    string Paper()
    {
        var file = Path.Combine(_folder, "paper.pdf");
        File.WriteAllBytes(
            file,
            Printed.Of(Everything, new PageSetup(Papers.Typesetting.Setup.Paper.A4) { HeadLeft = "Lighthouse", Stamp = "DRAFT" }).Bytes
        );
        return file;
    }

    const string Everything = """
        <header><h1>Camera report</h1><div class="side"><dl class="fields"><div><dt>Roll</dt><dd>R03</dd></div></dl></div></header>
        <h2>Takes</h2>
        <table><caption>Roll R03</caption>
          <thead><tr><th scope="col">Scene</th><th scope="col">Footage</th></tr></thead>
          <tbody><tr><th scope="row">7/B</th><td>10+10</td></tr><tr><th scope="row">7/C</th><td>6+10</td></tr><tr><td colspan="2"></td></tr></tbody></table>
        <figure aria-label="The strip of the roll"><svg viewBox="0 0 100 10"><rect x="0" y="0" width="100" height="10" fill="#dddddd" stroke="#111111"/><image x="1" y="1" width="8" height="8" href="data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAIAAAACCAYAAABytg0kAAAAFklEQVR4nGOoMhH4zwAC2vFtDUDqPwAk4gRNDA/VRwAAAABJRU5ErkJggg=="/></svg></figure>
        <ul class="checks"><li class="done">Gate checked</li></ul>
        <aside class="caution"><p>Keep it dark</p></aside>
        <p>See <a href="https://example.org/(x)">the notes</a> on the in-camera dissolve.</p>
        """;

    const string Expected = """
        Document
          Div
            H1
            Div
              L
                LI
                  Lbl
                  LBody
          H2
          Table
            Caption
            TR
              TH
              TH
            TR
              TH
              TD
            TR
              TH
              TD
            TR
              TD
          Figure
          L
            LI
              Lbl
              LBody
          Div
            P
          P
            Link
        """;
}
