using System.Globalization;
using System.Text;
using UglyToad.PdfPig;

namespace Spoolbook.Acceptance;

/// <summary>How many takes fit on a camera report.</summary>
public sealed class LongRollTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Theory]
    [InlineData("a4")]
    [InlineData("letter")]
    public void A_roll_of_22_takes_fits_one_page_with_its_strip_and_one_of_60_runs_over_with_its_head(string paper)
    {
        Write(
            "production.yaml",
            $$"""
            spoolbook: 1
            title: A Long Day at the Weir
            code: WEIR
            paper: {{paper}}
            people: [{id: ana, name: Ana Vesterholt-Bui, role: Camera assistant}]
            lenses: [{lens: 25mm, focal: 25, widest: 1.4, smallest: 22, nearest: 1.5ft}]
            lots: [{lot: N250-A, stock: Colour negative 250 D, emulsion: 0412-118, ei: 250, balance: daylight, process: ecn-2, length: 100ft, units: 2}]
            """
        );
        Write("rolls/r01.yaml", Roll("R01", 1, 22));
        Write("rolls/r02.yaml", Roll("R02", 2, 60));
        Assert.Equal(0, _bench.Run("make", _bench.PathOf("weir"), "--out", "papers").Status);

        var pages = Pages.TextOf(_bench.PathOf("papers/camera-report-R01.pdf"));
        var page = Assert.Single(pages);
        Assert.All(Enumerable.Range(1, 22), n =>
            Assert.Contains(FormattableString.Invariant($" {n} 1A/{n} "), page, StringComparison.Ordinal)
        );
        Assert.Contains("Received by the lab", page, StringComparison.Ordinal);
        using (var pdf = PdfDocument.Open(_bench.PathOf("papers/camera-report-R01.pdf")))
        {
            Assert.True(pdf.GetPage(1).Paths.Count > 22);
        }

        var over = Pages.TextOf(_bench.PathOf("papers/camera-report-R02.pdf"));
        Assert.True(over.Count > 1);
        Assert.All(over.Take(2), p => Assert.Contains("No. Slate Mark From To Length", p, StringComparison.Ordinal));
        Assert.All(Enumerable.Range(1, 60), n =>
            Assert.Contains(over, p => p.Contains(FormattableString.Invariant($" {n} 2A/{n} "), StringComparison.Ordinal))
        );
    }

    void Write(string name, string text)
    {
        var path = _bench.PathOf(Path.Combine("weir", name));
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }

    // Takes of one length from 4 ft to 96, each with a remark, as a busy assistant writes them.
    static string Roll(string name, int unit, int takes)
    {
        var text = new StringBuilder(
            string.Create(
                CultureInfo.InvariantCulture,
                $$"""
                spoolbook: 1
                roll: {{name}}
                lot: N250-A
                unit: {{unit}}
                load: {on: 2026-05-0{{unit}} 08:00, by: ana, light: subdued, head: 4+00, loops: set, plate: closed, speed-after: 24}
                log:

                """
            )
        );
        for (var take = 1; take <= takes; take++)
        {
            var to = 160 + (take * 3680 / takes);
            text.Append(
                CultureInfo.InvariantCulture,
                $"  - take: {{scene: {unit}, shot: A, take: {take}, to: {to}fr, lens: 25mm, stop: 5.6, focus: 8ft, mark: "
                    + $"{(take % 3 == 0 ? "good" : "ng")}, note: \"A hand on the sluice, again\"}}\n"
            );
        }

        return text
            + "unload: {on: 2026-05-09 18:00, by: ana, light: subdued, tail: 2+00}\nlab: {process: ecn-2, push: 0, notes: \"Develop "
            + "normal, scan flat.\"}\n";
    }
}
