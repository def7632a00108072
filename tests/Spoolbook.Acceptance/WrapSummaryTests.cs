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
                "Stock bought, orders sent",
                "Still to come: shots left",
                "Total at the end",
                "Will the film last?",
                "Order",
                "Listed, with a good take (1 more not listed)",
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

    [Fact]
    public void A_sum_is_without_practice_rolls_only_where_there_was_one()
    {
        Assert.Contains("Total without practice rolls", string.Join(' ', Made(Repository.Sample)), StringComparison.Ordinal);
        var summary = string.Join(' ', Made(Clean("two-units")));
        Assert.Contains("Total 84+00 52+00", summary, StringComparison.Ordinal);
        Assert.DoesNotContain("without practice", summary, StringComparison.Ordinal);
    }

    // 100 ft in the camera with 2 ft run, and 60 ft cut off another roll.
    [Fact]
    public void Film_in_a_camera_is_not_shot_yet_and_no_short_end()
    {
        var file = _bench.PathOf("two.yaml");
        File.WriteAllText(
            file,
            """
            spoolbook: 1
            title: Untitled
            code: X
            lots: [{lot: A, stock: Stock, ei: 100, process: ecn-2, length: 100ft, units: 2}]
            rolls:
              - {roll: 1, lot: A, load: {on: 2026-05-01 08:00, light: dark, head: 2+00}}
              - roll: 2
                lot: A
                load: {on: 2026-05-01 08:00, light: dark, head: 2+00}
                log: [{take: {scene: 1, take: 1, to: 40+00, mark: good}}]
                unload: {on: 2026-05-01 09:00, light: dark, tail: 0+00}
            """
        );
        _bench.Run("make", file, "--out", "papers", "--draft");
        var summary = Text("wrap-summary");

        Assert.Contains("SE Not shot yet Total", summary, StringComparison.Ordinal);
        Assert.Contains("Total 38+00 – – 4+00 60+00 98+00 200+00", summary, StringComparison.Ordinal);
        Assert.Contains("what is not shot yet add up to the film loaded", summary, StringComparison.Ordinal);
    }

    // The average of the shots left takes less than is there, and to be as sure as usual takes more.
    [Fact]
    public void What_to_order_to_be_sure_is_not_called_nothing_to_buy()
    {
        var first = Made(Clean("half-way"))[0];
        Assert.Contains("1 unit of Colour negative 250 D", first, StringComparison.Ordinal);
        Assert.Contains("the order below is for safety, and not in this figure", first, StringComparison.Ordinal);
        Assert.DoesNotContain("No stock to buy", first, StringComparison.Ordinal);
    }

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

    // 600 ft for shooting, 100 ft for practice, 200 ft of the school's store; 20 ft went to another production and came back.
    [Fact]
    public void Every_foot_that_came_is_in_one_bar()
    {
        var summary = string.Join(' ', Made(Clean("lent-and-shared")));
        Assert.Contains(
            "Bought 600+00 ft + bought for practice 100+00 ft + from others 200+00 ft = 900+00 ft.",
            summary,
            StringComparison.Ordinal
        );
        foreach (
            var bar in new[]
            {
                "Practice 100+00 ft",
                "Lost in re-canning or cutting 5+00 ft",
                "Lost 113+00 ft",
                "Damaged 100+00 ft",
                "Sent away 100+00 ft",
                "Short ends 24+00 ft",
                "Not loaded 197+00 ft",
            }
        )
        {
            Assert.Contains(bar, summary, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_re_canned_unit_is_not_called_sealed_and_a_short_end_is_in_the_sum()
    {
        Made(Clean("lent-and-shared"));
        var page = File.ReadAllText(_bench.PathOf("papers/wrap-summary.html"));
        Assert.Contains("Colour negative 250 D left, 1 sealed, 1 re-canned, 1 short end", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_practice_roll_has_no_process_to_be_run_in() =>
        Assert.Matches("R0 Black and white negative, outdated.*do not process", string.Join(' ', Made(Clean("lent-and-shared"))));

    [Fact]
    public void The_pieces_of_a_short_end_have_the_names_of_their_cans_everywhere()
    {
        var summary = string.Join(' ', Made(Clean("lent-and-shared")));
        Assert.Contains("split into R1-SE1 20+00, R1-SE2 15+00, R1-SE3 24+00", summary, StringComparison.Ordinal);
        Assert.Contains("R1-SE1 sent to the weir production", summary, StringComparison.Ordinal);
        Assert.Contains("R1-SE1 N250-A Colour negative 250 D 20+00 loaded as R3", summary, StringComparison.Ordinal);
        Assert.Contains("R1-SE2 N250-A Colour negative 250 D 13+00 lost", summary, StringComparison.Ordinal);
        Assert.Contains("R1-SE3 N250-A Colour negative 250 D 24+00 in its can", summary, StringComparison.Ordinal);
        Assert.Contains("re-canned, 3+00 lost", summary, StringComparison.Ordinal);
        Assert.Contains("R1-SE1 reloaded as R3", summary, StringComparison.Ordinal);
        Assert.Contains("N250-A / R1-SE1", Text("camera-report-R3"), StringComparison.Ordinal);
        Assert.Contains("R1-SE3", Text("can-labels"), StringComparison.Ordinal);
        Assert.Contains("N250-A / R1-SE3", Text("log-sheets"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_short_end_that_was_loaded_again_names_its_roll() =>
        Assert.Contains("R02-SE reloaded as R05", string.Join(' ', Made(Repository.Sample)), StringComparison.Ordinal);

    [Fact]
    public void Money_to_come_says_what_it_is_worked_out_from() =>
        Assert.Contains(
            "Still to come: 873.24 EUR for the lab on 841+02 ft, the average of the shots left, "
                + "at the rate so far (830.62 EUR for 800+00 ft).",
            Made(Clean("half-way"))[0],
            StringComparison.Ordinal
        );

    [Fact]
    public void An_order_that_has_not_gone_is_not_spent()
    {
        Assert.Contains("Ordered, not yet sent", Made(Clean("half-way"))[0], StringComparison.Ordinal);
        Assert.DoesNotContain("Ordered, not yet sent", Made(Clean("lent-and-shared"))[0], StringComparison.Ordinal);

        // An order without rates does not cost nothing.
        var unpriced = Made(Clean("passes"))[0];
        Assert.Contains("Ordered, not yet sent", unpriced, StringComparison.Ordinal);
        Assert.DoesNotContain("0.00", unpriced.Replace("82.00", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void Kit_that_is_missing_and_accepted_is_so_called() =>
        Assert.Contains(
            "Lens caps: 3 went out, 2 came back. Missing, accepted: One went into the lock.",
            Made(Clean("lent-and-shared"))[0],
            StringComparison.Ordinal
        );

    [Fact]
    public void All_shots_but_a_dropped_one_are_not_all_shots()
    {
        Made(Clean("lent-and-shared"));
        var page = File.ReadAllText(_bench.PathOf("papers/wrap-summary.html"));
        Assert.Contains("nothing left to shoot (4A dropped)", page, StringComparison.Ordinal);
    }

    string Text(string paper) => string.Join(' ', Pages.TextOf(_bench.PathOf($"papers/{paper}.pdf")));

    static string Clean(string name) => Path.Combine(TestFolders.Clean, name);

    IReadOnlyList<string> Made(string production)
    {
        Assert.Equal(0, _bench.Run("make", production, "--out", "papers").Status);
        return Pages.TextOf(_bench.PathOf("papers/wrap-summary.pdf"));
    }
}
