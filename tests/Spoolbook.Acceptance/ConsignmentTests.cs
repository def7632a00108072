using System.Text.RegularExpressions;

namespace Spoolbook.Acceptance;

/// <summary>The orders of a production that sent film to the lab more than once.</summary>
public sealed partial class ConsignmentTests : IDisposable
{
    const string Together =
        "    - {sent: 2026-10-06, rolls: [R01, R02, R03, R04, R05, R06], how: \"By hand, with Dov\", receipt: Signed for by Oona}\n";
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void Each_consignment_has_its_own_order_with_how_it_went_and_where_the_other_rolls_are()
    {
        Make(
            "    - {sent: 2026-10-06, rolls: [R03, R04, R05, R06]}\n    - {sent: 2026-10-04, rolls: [R01, R02], how: Night courier, "
                + "boxes: 2, receipt: Waybill 77-0142}\n"
        );
        var first = Order("lab-order-1");
        var second = Order("lab-order-2");

        foreach (
            var said in new[]
            {
                "Consignment 1 of 2",
                "2 cans",
                "Night courier",
                "2 boxes",
                "Receipt: Waybill 77-0142",
                "R03, R04, R05, R06: went with consignment 2 on Tue 6 Oct 2026",
            }
        )
        {
            Assert.Contains(said, first, StringComparison.Ordinal);
        }

        foreach (var said in new[] { "Consignment 2 of 2", "4 cans", "R01, R02: went with consignment 1 on Sun 4 Oct 2026" })
        {
            Assert.Contains(said, second, StringComparison.Ordinal);
        }

        Assert.Contains("Process ECN-2, R01", first, StringComparison.Ordinal);
        Assert.DoesNotContain("Process ECN-2, R01", second, StringComparison.Ordinal);
        Assert.False(File.Exists(_bench.PathOf("papers/lab-order.pdf")));
        Assert.Contains("lab-order-2.pdf", File.ReadAllText(_bench.PathOf("papers/index.html")), StringComparison.Ordinal);
        Assert.Contains(
            "Shipping, consignment 2",
            string.Join(' ', Pages.TextOf(_bench.PathOf("papers/wrap-summary.pdf"))),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_roll_sent_twice_is_billed_with_its_first_consignment_and_named_in_the_second()
    {
        Make(
            "    - {sent: 2026-10-04, rolls: [R01, R02]}\n    - {sent: 2026-10-06, rolls: [R01, R03, R04, R05, R06]}\n",
            "\naccept:\n  - {check: lab/sent-twice, roll: R01, reason: Came back for another scan}\n"
        );

        Assert.Contains("Process ECN-2, R01", Order("lab-order-1"), StringComparison.Ordinal);
        Assert.Contains("R01: in this box again; ordered and billed with consignment 1", Order("lab-order-2"), StringComparison.Ordinal);
        Assert.DoesNotContain("Process ECN-2, R01", Order("lab-order-2"), StringComparison.Ordinal);
    }

    string Order(string name)
    {
        Assert.NotEmpty(Pages.TextOf(_bench.PathOf("papers/" + name + ".pdf")));
        return Tags().Replace(HeadToValue().Replace(File.ReadAllText(_bench.PathOf("papers/" + name + ".html")), ", "), "");
    }

    [GeneratedRegex("</th><td[^>]*>")]
    private static partial Regex HeadToValue();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tags();

    void Make(string consignments, string more = "")
    {
        var sheet = Path.Combine(_bench.CopyOf(Repository.Sample), "production.yaml");
        var text = File.ReadAllText(sheet);
        Assert.Contains(Together, text, StringComparison.Ordinal);
        File.WriteAllText(sheet, text.Replace(Together, consignments, StringComparison.Ordinal) + more);
        var (status, told, error) = _bench.Run("make", _bench.PathOf("production"), "--out", _bench.PathOf("papers"));
        Assert.True(status == 0, told + error);
    }
}
