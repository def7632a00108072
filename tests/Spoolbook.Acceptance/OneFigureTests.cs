using System.Text.RegularExpressions;

namespace Spoolbook.Acceptance;

/// <summary>What a reader with two papers in the hand would ask about: one figure and one word for one thing.</summary>
public sealed partial class OneFigureTests(MadeSample sample) : IClassFixture<MadeSample>, IDisposable
{
    readonly MadeOnce _made = new();

    public void Dispose() => _made.Dispose();

    [Fact]
    public void Film_in_the_can_has_that_name_on_the_report_and_on_the_order_and_exposed_is_more()
    {
        Assert.Contains("In the can 95+18 of 100+00 ft", sample.WordsOf("camera-report-R04"), StringComparison.Ordinal);
        Assert.Contains("In the can 495+18 ft", sample.WordsOf("lab-order"), StringComparison.Ordinal);
        Assert.Contains("Exposed: all film used up, with ends thrown away.", sample.WordsOf("wrap-summary"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_dissolve_that_does_not_line_up_says_which_frames_are_which() =>
        Assert.Contains(
            "52 fr overall, 29+04–30+16 ft, 4 fr late, fades 48 + 48 fr, 44 together",
            sample.WordsOf("camera-report-R06"),
            StringComparison.Ordinal
        );

    [Fact]
    public void One_time_is_one_number_of_stops_on_the_card() =>
        Assert.Equal(
            ["\u22121/2", "\u22121/2"],
            Cells().Matches(File.ReadAllText(sample.PathOf("exposure-card-B1.html"))).Select(m => m.Groups[1].Value + m.Groups[2].Value)
        );

    [Fact]
    public void A_time_lapse_says_on_its_report_how_long_its_event_was() =>
        Assert.Contains("time-lapse, a frame every 5.0 s; covers 12:", sample.WordsOf("camera-report-R02"), StringComparison.Ordinal);

    [Fact]
    public void Film_that_ran_twice_is_said_to_count_with_the_worse_mark() =>
        Assert.Contains("Double exposures count once: under the worse take", sample.WordsOf("wrap-summary"), StringComparison.Ordinal);

    [Fact]
    public void The_shutters_table_is_for_the_speed_that_its_times_are_for()
    {
        var card = Lent("exposure-card-B1");

        Assert.Contains("Variable shutter, at 25 Mark", card, StringComparison.Ordinal);
        Assert.Contains("open 1 0 1/68 s 1/85 s", card, StringComparison.Ordinal);
    }

    [Fact]
    public void A_finder_loss_that_nobody_wrote_down_is_not_a_loss_of_nothing()
    {
        var card = PageText.Of(Path.Combine(_made.PapersOf(Path.Combine(TestFolders.Clean, "metric-35mm-25")), "exposure-card-A.html"));

        Assert.Contains("finder takes ? (ask the lender)", card, StringComparison.Ordinal);
        Assert.Contains("the marked time, until you know what the finder takes", card, StringComparison.Ordinal);
        Assert.DoesNotContain("finder takes 0\u00A0%", card, StringComparison.Ordinal);
    }

    [Fact]
    public void Takes_on_another_scenes_film_have_no_film_of_their_own_and_say_so()
    {
        var wrap = PageText.Of(Path.Combine(_made.PapersOf(Path.Combine(TestFolders.Clean, "passes")), "wrap-summary.html"));

        Assert.Contains(" 5 3 1.0 shared ", wrap, StringComparison.Ordinal);
        Assert.Contains("A scene shot only over another's film shows none of its own.", wrap, StringComparison.Ordinal);
    }

    [Fact]
    public void A_dropped_shot_is_not_to_get_and_orders_no_film()
    {
        var wrap = Lent("wrap-summary");

        Assert.Contains("dropped", wrap, StringComparison.Ordinal);
        Assert.Contains("3 of 3", wrap, StringComparison.Ordinal);
        Assert.DoesNotContain("Still to get", wrap, StringComparison.Ordinal);
        Assert.DoesNotContain("1 unit of", wrap, StringComparison.Ordinal);
        Assert.Contains("-1 unit ", wrap, StringComparison.Ordinal);
        Assert.DoesNotContain("Intentional", wrap, StringComparison.Ordinal);
    }

    [Fact]
    public void Film_that_went_after_the_last_day_of_shooting_is_gone_from_the_curve_as_from_the_table() =>
        Assert.Contains(
            "Sun 4 Oct 2026: 221+00 ft left.",
            File.ReadAllText(Path.Combine(_made.PapersOf(Shared), "wrap-summary.html")),
            StringComparison.Ordinal
        );

    [Fact]
    public void A_report_says_nothing_of_a_body_that_nobody_wrote_and_trusts_a_true_dial()
    {
        var report = Lent("camera-report-R1");

        Assert.Contains("Unloaded, rethreaded; zero shifted", report, StringComparison.Ordinal);
        Assert.Contains("Footage dial reads true (6 readings).", report, StringComparison.Ordinal);
    }

    [Fact]
    public void The_kit_of_two_owners_is_in_two_heaps()
    {
        var list = Lent("kit-list");

        Assert.Contains("Film department: Camera bodies", list, StringComparison.Ordinal);
        Assert.Contains("The sound people: Lenses", list, StringComparison.Ordinal);
        Assert.DoesNotContain("belongs to", list, StringComparison.Ordinal);
    }

    static string Shared => Path.Combine(TestFolders.Clean, "lent-and-shared");

    string Lent(string paper) => PageText.Of(Path.Combine(_made.PapersOf(Shared), paper + ".html"));

    [GeneratedRegex("1/108 s</td><td[^>]*>(\u2212[^<]*)</td>|(\u2212[^<]*)</td><td[^>]*>1/87 s</td>")]
    private static partial Regex Cells();
}
