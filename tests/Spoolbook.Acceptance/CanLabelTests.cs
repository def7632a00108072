using System.Globalization;
using System.Text.Json;
using Spoolbook.Papers.Tests;

namespace Spoolbook.Acceptance;

/// <summary>The label on each can: what a lab reads first, and what a reader of codes reads.</summary>
public sealed class CanLabelTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [ToolFact("zbarimg")]
    public void The_code_on_every_printed_label_is_the_can_in_the_ledger()
    {
        Make(Bench.Sample);
        Assert.Equal(Cans(), CodesRead());
    }

    [ToolFact("zbarimg")]
    public void Forty_rolls_have_forty_labels_and_each_can_be_read()
    {
        Make(Path.Combine(Folders.TestFolders.Clean, "forty-rolls"));
        Assert.True(Cans().Count >= 40);
        Assert.Equal(Cans(), CodesRead());
    }

    [Fact]
    public void A_label_says_what_is_in_the_can_how_to_treat_it_and_where_it_goes_back()
    {
        Make(Bench.Sample);
        var text = string.Join(' ', Pages.TextOf(_bench.PathOf("papers/can-labels.pdf")));

        foreach (var said in new[] { "EXPOSED", "ecn-2 Push +1", "Colour negative 500 T", "EI 1000", "0377-042", "100+00 ft exposed of 100+00 ft", "camera B1", "Sat 3 Oct 2026", "Salt for the Heron · HERON", "Return to: Salt for the Heron", "DO NOT OPEN" })
        {
            Assert.Contains(said, text, StringComparison.Ordinal);
        }

        Assert.DoesNotContain("R00", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("a4-8", 8, 595.3, 841.9)]
    [InlineData("letter-6", 6, 612, 792)]
    [InlineData("cut", 8, 595.3, 841.9)]
    public void A_sheet_that_was_begun_is_used_up(string sheet, int labels, double width, double height)
    {
        var production = _bench.CopyOf(Bench.Sample);
        Write(production, $"labels: {{sheet: {sheet}, start: {labels - 1}}}");
        Make(production);

        using var pdf = UglyToad.PdfPig.PdfDocument.Open(_bench.PathOf("papers/can-labels.pdf"));
        Assert.Equal(2, pdf.NumberOfPages);
        Assert.Equal(width, pdf.GetPage(1).Width, 0.1);
        Assert.Equal(height, pdf.GetPage(1).Height, 0.1);
        Assert.Equal([2, 4], Pages.TextOf(_bench.PathOf("papers/can-labels.pdf")).Select(t => t.Split("EXPOSED").Length - 1));
        // The last row of the first sheet: nothing is printed where labels are gone.
        Assert.All(pdf.GetPage(1).Letters, l => Assert.True(l.StartBaseLine.Y < height / (labels / 2) + 40));
    }

    [Fact]
    public void A_label_that_the_sheet_does_not_have_is_told()
    {
        var production = _bench.CopyOf(Bench.Sample);
        Write(production, "labels: {sheet: letter-6, start: 7}");

        var (status, printed, _) = _bench.Run("make", production, "--out", "papers");

        Assert.Equal(0, status);
        Assert.Contains("start at label 7, and the sheet has 6", printed, StringComparison.Ordinal);
        var line = File.ReadLines(Path.Combine(production, "production.yaml")).TakeWhile(l => !l.StartsWith("labels:", StringComparison.Ordinal)).Count() + 1;
        Assert.Contains(FormattableString.Invariant($"production.yaml:{line}:"), printed, StringComparison.Ordinal);
    }

    [Fact]
    public void A_can_that_is_kept_says_so_and_a_short_end_is_never_taken_for_exposed()
    {
        var production = _bench.CopyOf(Bench.Sample);
        var roll = Path.Combine(production, "rolls", "r02.yaml");
        File.WriteAllText(roll, File.ReadAllText(roll).Replace("lab: {process: ecn-2,", "lab: {send: no, process: ecn-2,", StringComparison.Ordinal));
        File.Delete(Path.Combine(production, "rolls", "r05.yaml"));
        Make(production);

        var text = string.Join(' ', Pages.TextOf(_bench.PathOf("papers/can-labels.pdf")));
        Assert.Contains("EXPOSED HOLD", text, StringComparison.Ordinal);
        Assert.Contains("SHORT END,", text, StringComparison.Ordinal);
        Assert.Contains("Raw stock left", text, StringComparison.Ordinal);
        Assert.Contains("HERON/R02-SE/", text, StringComparison.Ordinal);
    }

    void Make(string production) => Assert.Equal(0, _bench.Run("make", production, "--out", "papers").Status);

    static void Write(string production, string line)
    {
        var file = Path.Combine(production, "production.yaml");
        File.WriteAllText(file, File.ReadAllText(file).Replace("gauge: 16mm\n", line + "\n", StringComparison.Ordinal));
    }

    List<string> Cans()
    {
        using var ledger = JsonDocument.Parse(File.ReadAllBytes(_bench.PathOf("papers/ledger.json")));
        return [.. ledger.RootElement.GetProperty("rolls").EnumerateArray().Where(r => r.GetProperty("taken-out").ValueKind == JsonValueKind.String).Select(r => r.GetProperty("can").GetString()!).Order(StringComparer.Ordinal)];
    }

    /// <summary>Each label of the plain sheet held before a reader of its own, as a can is: 95 × 66 mm, two by four in the middle of the page.</summary>
    List<string> CodesRead()
    {
        const int Resolution = 120;
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(_bench.PathOf("papers/can-labels.pdf"));
        var (wide, high) = (Dots(95), Dots(66));
        var left = (int)(pdf.GetPage(1).Width * Resolution / 72 / 2) - wide;
        var top = (int)(pdf.GetPage(1).Height * Resolution / 72 / 2) - (2 * high);
        var places = from page in pdf.GetPages() from row in Enumerable.Range(0, 4) from column in Enumerable.Range(0, 2) select (page.Number, X: left + (column * wide), Y: top + (row * high));
        return [.. places.Select(p => Read(p.Number, p.X, p.Y)).Where(code => code.Length > 0).Order(StringComparer.Ordinal)];

        static int Dots(double millimetres) => (int)(millimetres / 25.4 * Resolution);

        string Read(int page, int x, int y)
        {
            var picture = _bench.PathOf("label");
            IEnumerable<int> numbers = [Resolution, page, page, x, y, wide, high];
            var how = new[] { "-r", "-f", "-l", "-x", "-y", "-W", "-H" }.Zip(numbers, (name, number) => (string[])[name, number.ToString(CultureInfo.InvariantCulture)]).SelectMany(o => o);
            Assert.Equal(0, Tools.Run("pdftoppm", [.. how, "-gray", "-png", "-singlefile", _bench.PathOf("papers/can-labels.pdf"), picture]).Status);
            return Tools.Run("zbarimg", "--quiet", "--raw", picture + ".png").Output.Split('\n')[0];
        }
    }
}
