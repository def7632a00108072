using System.Text.RegularExpressions;

namespace Spoolbook.Acceptance;

/// <summary>What a lab's intake looks for on the order, on the cans and on the reports before it opens anything.</summary>
public sealed partial class LabIntakeTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void X_rayed_film_says_so_on_the_order_on_its_can_and_on_its_report()
    {
        var production = _bench.CopyOf(Repository.Sample);
        Edit(
            Path.Combine(production, "stock.yaml"),
            "stock-log:\n",
            "stock-log:\n  - x-rayed: {lot: N250-A, units: [2], on: 2026-10-01, passes: 2}\n"
        );
        Make(production);

        // R02 is of that unit, and R05 of its short end.
        var order = Words("lab-order");
        Assert.Equal(2, Regex.Count(order, "Expect: X-rayed 2×: more grain, less contrast"));
        Assert.Equal(2, Regex.Count(Words("can-labels"), "X-RAYED 2×"));
        Assert.Contains("X-rayed 2×", Words("camera-report-R02"), StringComparison.Ordinal);
        Assert.Contains("X-rayed 2×", Words("camera-report-R05"), StringComparison.Ordinal);
        Assert.DoesNotContain("X-rayed", Words("camera-report-R01"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_of_the_order_has_the_number_that_its_can_has_on_the_label()
    {
        Make(_bench.CopyOf(Repository.Sample));
        var page = File.ReadAllText(_bench.PathOf("papers/lab-order.html"));
        var onOrder = Line().Matches(page).Select(m => (m.Groups[2].Value, m.Groups[1].Value)).Order();
        var labels = File.ReadAllText(_bench.PathOf("papers/can-labels.html"));
        var onLabels = Label().Matches(labels).Select(m => (m.Groups[1].Value, m.Groups[2].Value)).Order();

        Assert.Equal(6, onOrder.Count());
        Assert.Equal(onLabels, onOrder);
    }

    [Theory]
    [InlineData("en", "MISSING: what to deliver. Call before scanning.")]
    [InlineData("de", "FEHLT: was zu liefern ist. Vor dem Abtasten anrufen.")]
    public void A_scan_without_a_word_on_what_to_deliver_says_to_call(string language, string said)
    {
        var production = _bench.CopyOf(Repository.Sample);
        var file = Path.Combine(production, "production.yaml");
        Edit(file, "language: en", $"language: {language}");
        File.WriteAllText(file, Deliver().Replace(File.ReadAllText(file), ""));
        Make(production);

        Assert.Contains(said, Words("lab-order"), StringComparison.Ordinal);
    }

    [Fact]
    public void Reversal_stands_out_on_the_report_as_on_the_can()
    {
        Make(_bench.CopyOf(Repository.Sample));

        Assert.Contains(
            "<span class=\"inverse\">B&amp;W REVERSAL</span>",
            File.ReadAllText(_bench.PathOf("papers/camera-report-R03.html")),
            StringComparison.Ordinal
        );
    }

    void Make(string production) => Assert.Equal(0, _bench.Run("make", production, "--out", "papers").Status);

    string Words(string paper) => string.Join(' ', Pages.TextOf(_bench.PathOf($"papers/{paper}.pdf")));

    static void Edit(string file, string from, string to)
    {
        var text = File.ReadAllText(file);
        Assert.Contains(from, text, StringComparison.Ordinal);
        File.WriteAllText(file, text.Replace(from, to, StringComparison.Ordinal));
    }

    [GeneratedRegex(@"<td[^>]*>(\d)</td><th scope=""row"".*?HERON/(R\d\d)/", RegexOptions.Singleline)]
    private static partial Regex Line();

    [GeneratedRegex(@"HERON/(R\d\d)/\w</strong> · Can (\d) of 6")]
    private static partial Regex Label();

    [GeneratedRegex(@"(?m)^  deliver:[^\n]*\n(?:    [^\n]*\n)*")]
    private static partial Regex Deliver();
}
