namespace Spoolbook.Acceptance;

/// <summary>The wrap summary: a page for the producer, and an appendix that says nothing again.</summary>
public sealed class WrapSummaryTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void The_first_page_has_the_money_the_film_the_shots_the_kit_and_the_signatures()
    {
        var pages = Made(Repository.Sample);
        foreach (
            var answer in new[]
            {
                "Spent and ordered",
                "Committed",
                "To come",
                "Will the film last?",
                "Order",
                "With a good take",
                "Kit missing",
                "Lens caps: 3 went out, 2 came back.",
                "Signature",
            }
        )
        {
            Assert.Contains(answer, pages[0], StringComparison.Ordinal);
        }

        Assert.DoesNotContain("Total without practice rolls", pages[0], StringComparison.Ordinal);
        Assert.DoesNotContain("Lens caps: 3 went out, 2 came back.", string.Join(' ', pages.Skip(1)), StringComparison.Ordinal);
    }

    [Fact]
    public void Forty_rolls_fit_on_eight_pages() => Assert.InRange(Made(Clean("forty-rolls")).Count, 2, 8);

    // The units shoot with a camera each.
    [Fact]
    public void Two_units_on_one_date_are_two_lines()
    {
        var summary = string.Join(' ', Made(Clean("two-units")));
        Assert.Contains("Sat 18 Jul 2026, camera B1", summary, StringComparison.Ordinal);
        Assert.Contains("Sat 18 Jul 2026, camera B2", summary, StringComparison.Ordinal);
        Assert.DoesNotContain("Sun 19 Jul 2026, camera", summary, StringComparison.Ordinal);
        Assert.Contains("2: Second unit on the mole", summary, StringComparison.Ordinal);
    }

    // Three units of 122.00 m are 366.00 m.
    [Fact]
    public void In_metres_the_film_received_is_the_sum_of_its_cans()
    {
        var summary = string.Join(' ', Made(Clean("metric-35mm-25")));
        Assert.Contains("366.00 m received", summary, StringComparison.Ordinal);
        Assert.DoesNotContain("365.99", summary, StringComparison.Ordinal);
    }

    static string Clean(string name) => Path.Combine(TestFolders.Clean, name);

    IReadOnlyList<string> Made(string production)
    {
        Assert.Equal(0, _bench.Run("make", production, "--out", "papers").Status);
        return Pages.TextOf(_bench.PathOf("papers/wrap-summary.pdf"));
    }
}
