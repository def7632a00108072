using Spoolbook.Checks.Tests.Pages;

namespace Spoolbook.Checks.Tests;

/// <summary>The boxes at the foot of a paper sheet against the log: rounding is no mistake, and a slip of the pen is one.</summary>
public class TotalsTests
{
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

    [Fact]
    public void A_practice_roll_is_not_added_up() =>
        Assert.DoesNotContain("length/totals-differ", Found($"practice: yes\n{Log}\n{Unloaded}\ntotals: {{good: 99, takes: 9}}\n"));

    static IEnumerable<string> Found(string example) => WholeRun.Of(BaseProduction.With(example)).Findings.Select(f => f.Check);
}
