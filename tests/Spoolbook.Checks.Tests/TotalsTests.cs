using Spoolbook.Checks.Tests.Pages;

namespace Spoolbook.Checks.Tests;

/// <summary>
/// The boxes at the foot of a paper sheet against the log: rounding is no mistake, and a slip of the pen is one. Figures are sums
/// by hand of the takes above them, 40 frames to the foot (16 mm film).
/// </summary>
public class TotalsTests
{
    const string Check = "length/totals-differ";

    const string Unloaded = "unload: {on: 2026-10-04 16:45, by: ana, light: dark, tail: 2+00}";

    const string Log = """
        load: {on: 2026-10-04 09:10, by: ana, light: subdued, head: 4+00, loops: set, plate: closed, speed-after: 24}
        log:
          - take: {scene: 1, shot: A, take: 1, to: 12+15, lens: 25mm, stop: 5.6, mark: ng}
          - take: {scene: 1, shot: A, take: 2, to: 20+10, lens: 25mm, stop: 5.6, mark: good}
          - run-off: {to: 60+00, lens: capped}
        """;

    const string Rounded = "totals: {good: 8, no-good: 8, waste: 46, short-end: 38, loaded: 100, takes: 2}";
    const string Exact = "totals: {good: 7+35, no-good: 335fr, waste: 45+30, short-end: 38+00, loaded: 100+00, takes: 2}";

    [Theory]
    [InlineData(Rounded)]
    [InlineData(Exact)]
    [InlineData("totals: {good: 7.9ft, no-good: 8.4ft, waste: 45.8ft}")]
    [InlineData("totals: {good: 2.4m, no-good: 2.55m, loaded: 30.48m}")]
    [InlineData("totals: {takes: 2}")]
    public void A_sum_that_is_rounded_as_it_is_written_is_right(string totals) => Assert.Empty(Found($"{Log}\n{Unloaded}\n{totals}\n"));

    [Theory]
    [InlineData("to: 12+15", "to: 11+15")]
    [InlineData("to: 20+10", "to: 19+10")]
    [InlineData("mark: ng", "mark: good")]
    [InlineData("head: 4+00", "head: 3+00")]
    [InlineData("tail: 2+00", "tail: 1+00")]
    [InlineData("to: 60+00", "to: 59+00")]
    [InlineData("  - run-off: {to: 60+00, lens: capped}\n", "")]
    [InlineData("  - take: {scene: 1, shot: A, take: 1, to: 12+15, lens: 25mm, stop: 5.6, mark: ng}\n", "")]
    public void A_slip_in_the_log_is_noticed_in_whole_feet_too(string written, string slipped)
    {
        var roll = $"{Log}\n{Unloaded}\n{Rounded}\n";
        Assert.Contains(written, roll, StringComparison.Ordinal);
        Assert.Contains("length/totals-differ", Found(roll.Replace(written, slipped, StringComparison.Ordinal)));
    }

    [Fact]
    public void A_frame_more_is_noticed_where_frames_are_written() =>
        Assert.Equal(["length/totals-differ"], Found($"{Log}\n{Unloaded}\n{Exact.Replace("7+35", "7+36", StringComparison.Ordinal)}\n"));

    [Fact]
    public void A_department_that_adds_up_to_the_nearest_foot_either_way_says_so() =>
        Assert.Empty(
            Found(
                $"{Log}\n{Unloaded}\n{Rounded.Replace("waste: 46", "waste: 45", StringComparison.Ordinal)}\n"
                    + "# production.yaml\nrules: {tolerances: {totals-slack: 1}}\n"
            )
        );

    [Theory]
    [InlineData("good: -5", "sheet/bad-length", "Box good: `-5` is less than 0.", "A length or a position counts up from 0.")]
    [InlineData("good: 4x", "sheet/bad-length", "Box good: `4x` has a unit that film is not measured in here.", "Write 31+12")]
    [InlineData("takes: many", "sheet/bad-number", "Box takes: `many` is not", "")]
    [InlineData("ng: 8", "sheet/unknown-key", "`ng` is not a key of the totals of a sheet.", "Did you mean `no-good`?")]
    [InlineData("SE: 38", "sheet/unknown-key", "`SE` is not a key of the totals of a sheet.", "Did you mean `short-end`?")]
    public void A_box_that_nobody_can_read_is_named_and_the_rest_of_its_roll_is_checked(string box, string check, string says, string help)
    {
        var roll = $"{Log.Replace("stop: 5.6, mark: good", "stop: 5.6, focus: 3in, mark: good", StringComparison.Ordinal)}\n{Unloaded}\n";
        var spoilt = WholeRun.Of(BaseProduction.With($"{roll}totals: {{{box}, hold: 30}}\n")).Findings;

        var wrong = Assert.Single(spoilt, f => f.Check == check);
        Assert.StartsWith(says, wrong.Message, StringComparison.Ordinal);
        Assert.StartsWith(help, wrong.Help, StringComparison.Ordinal);
        Assert.Equal(
            Found($"{roll}totals: {{hold: 30}}\n").Order(StringComparer.Ordinal),
            spoilt.Where(f => f != wrong).Select(f => f.Check).Order(StringComparer.Ordinal)
        );
        Assert.Contains("length/totals-differ", spoilt.Select(f => f.Check));
    }

    [Theory]
    [InlineData("good: 315", "these are frames: written `315fr`, the box is right")]
    [InlineData("waste: 64", "two digits may be swapped: written `46`, the box is right")]
    [InlineData("waste: 45+03", "two digits may be swapped: written `45+30`, the box is right")]
    [InlineData("good: 8+15, no-good: 7+35", "the boxes good and no good may be swapped: then all boxes add up")]
    [InlineData("no-good: 9, waste: 45", "the head is 4+00 here: at 3+00 all boxes add up")]
    [InlineData("good: 9, no-good: 7", "1A/1 ends here: 1+00 earlier, all boxes add up")]
    public void A_slip_that_makes_all_boxes_right_is_named(string totals, string cause) =>
        Assert.Contains(cause, Causes($"{Log}\n{Unloaded}\ntotals: {{{totals}}}\n"));

    [Fact]
    public void Several_takes_that_would_do_are_named_in_one_line()
    {
        var log = """
            log:
              - take: {scene: 1, shot: A, take: 1, to: 14+00, lens: 25mm, stop: 5.6, mark: good}
              - take: {scene: 1, shot: A, take: 2, to: 24+00, lens: 25mm, stop: 5.6, mark: good}
              - take: {scene: 1, shot: A, take: 3, to: 34+00, lens: 25mm, stop: 5.6, mark: good}
            """;

        Assert.Equal(
            ["one of 1A/1, 1A/2, 1A/3, marked no good: all boxes add up"],
            Causes($"{log}\n{Unloaded}\ntotals: {{good: 20, no-good: 10, takes: 3}}\n")
        );
    }

    [Theory]
    [InlineData("good: 10, no-good: 8, takes: 2", "the log probably lacks a take, 8+00 long and no good: with it all boxes add up")]
    [InlineData("good: 18, takes: 2", "")]
    public void A_take_that_is_on_the_sheet_alone_is_the_likely_cause(string totals, string cause) =>
        Assert.Equal(
            cause,
            string.Join(
                "; ",
                Causes(
                    "log:\n  - take: {scene: 1, shot: A, take: 1, to: 22+00, lens: 25mm, stop: 5.6, mark: good}\n"
                        + $"{Unloaded}\ntotals: {{{totals}}}\n"
                )
            )
        );

    [Fact]
    public void A_box_in_metres_is_answered_in_metres()
    {
        var finding = WholeRun.Of(BaseProduction.With($"{Log}\n{Unloaded}\ntotals: {{good: 3m}}\n")).Findings.Single(f => f.Check == Check);

        Assert.Equal("3.00 m on the sheet, 2.40 m from the log: 0.60 m more", finding.Figures.Single().Value.ToString());
    }

    [Fact]
    public void A_wrong_tail_behind_a_run_off_to_the_end_changes_no_box()
    {
        var roll = $"{Log.Replace("to: 60+00", "to: 100+00", StringComparison.Ordinal)}\n{Unloaded}\n";

        Assert.Empty(Found($"{roll}totals: {{good: 8, no-good: 8, waste: 84}}\n"));
        Assert.Empty(
            Found($"{roll.Replace("tail: 2+00", "tail: 6+00", StringComparison.Ordinal)}totals: {{good: 8, no-good: 8, waste: 84}}\n")
        );
    }

    [Fact]
    public void A_practice_roll_is_not_added_up() =>
        Assert.DoesNotContain("length/totals-differ", Found($"practice: yes\n{Log}\n{Unloaded}\ntotals: {{good: 99, takes: 9}}\n"));

    static IEnumerable<string> Causes(string example) =>
        WholeRun.Of(BaseProduction.With(example)).Findings.Single(f => f.Check == Check).Others.Select(o => o.Message.ToString());

    static IEnumerable<string> Found(string example) => WholeRun.Of(BaseProduction.With(example)).Findings.Select(f => f.Check);
}
