using System.Text.RegularExpressions;
using Spoolbook.Checks.Ruling;
using Spoolbook.Checks.Running;
using Spoolbook.Checks.Tests.Pages;
using Spoolbook.Film;
using Spoolbook.Reading;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Tests;

/// <summary>A department's own rules for every check of a production.</summary>
public class HouseRulesTests
{
    // A foot and eleven frames longer than the spring drives.
    const string LongTake = "log:\n  - take: {scene: 1, shot: A, take: 1, to: 23+11, lens: 25mm, stop: 5.6, mark: good}\n";

    [Theory]
    [InlineData("speed/spring-overrun: note", Level.Note)]
    [InlineData("speed/spring-overrun: error", Level.Error)]
    [InlineData("speed: note", Level.Note)]
    [InlineData("speed/spring-overrun: error, speed: off", Level.Error)]
    [InlineData("speed: off, speed/spring-overrun: error", Level.Error)]
    [InlineData("cover: off", Level.Warning)]
    public void A_finding_has_the_level_that_the_production_sets_for_its_check_or_else_its_group(string levels, Level level) =>
        Assert.Equal([("speed/spring-overrun", level)], Run($"levels: {{{levels}}}", LongTake).Findings.Select(f => (f.Check, f.Level)));

    [Theory]
    [InlineData("speed/spring-overrun: off")]
    [InlineData("speed: off")]
    public void A_check_that_is_off_has_no_findings(string levels) => Assert.Equal("", Run($"levels: {{{levels}}}", LongTake).Report());

    [Theory]
    [InlineData("1+00", 1)]
    [InlineData("1+11", 0)]
    [InlineData("51fr", 0)]
    [InlineData("50fr", 1)]
    [InlineData("0.5m", 0)]
    [InlineData("2s", 1)]
    public void A_wider_tolerance_lets_a_longer_take_pass(string slack, int findings) =>
        Assert.Equal(
            findings,
            Run($"tolerances: {{spring-slack: {slack}}}", LongTake).Findings.Count(f => f.Check == "speed/spring-overrun")
        );

    [Fact]
    public void A_warning_made_an_error_still_leaves_the_rest_of_the_roll_to_be_checked()
    {
        const string twoMistakes =
            "log:\n  - take: {scene: 1, shot: A, take: 1, to: 12+00, lens: 25mm, stop: 1.4, reading: 8, mark: good}\n  - take: {scene: "
                + "1, shot: B, take: 1, to: 32+00, lens: 25mm, stop: 5.6, mark: good}\n";
        var usual = Run("", twoMistakes).Findings.Select(f => f.Check);

        Assert.Equal(usual, Run("levels: {exposure: error, speed: error}", twoMistakes).Findings.Select(f => f.Check));
        Assert.Contains("speed/spring-overrun", usual);
    }

    [Fact]
    public void An_error_turned_off_no_longer_keeps_later_checks_from_its_roll()
    {
        const string both =
            "load: {on: 2026-10-04 09:10, by: ana, light: bright, head: 4+00, loops: not-set, plate: closed, speed-after: 24}\n" + LongTake;
        var off = Run("levels: {load: off}", both);

        Assert.Equal(["speed/spring-overrun"], off.Findings.Select(f => f.Check));
    }

    [Fact]
    public void What_a_waiver_accepts_stays_on_the_papers_at_any_level()
    {
        var run = Run("levels: {speed: off}", LongTake + "accept:\n  - {check: speed/spring-overrun, reason: Meant to slow down}\n");

        Assert.Equal("", run.Report());
        Assert.Equal(["speed/spring-overrun"], run.Waived.Select(w => w.Finding.Check));
    }

    [Fact]
    public void The_changes_list_each_level_and_tolerance_that_is_not_the_houses()
    {
        var changes = HouseLevels.Changes(
            Production(
                "levels: {focus: error, speed: warning, speed/out-of-range: off}, tolerances: {spring-slack: 1+00, counter-slack: 2, "
                    + "rewind-near: 24fr}"
            )
        );

        var levels = changes.OfType<LevelChange>().ToList();
        Assert.All(CheckList.All.Where(c => c.Group == "focus" && c.Level != Level.Error), c =>
            Assert.Contains(new LevelChange(c.Name, c.Level, Level.Error), levels)
        );
        Assert.Contains(levels, l => l is { Name: "speed/out-of-range", Set: null });
        Assert.DoesNotContain(levels, l => l.Name == "speed/spring-overrun");
        Assert.Equal([new ToleranceChange("spring-slack", "20fr", "1+00")], changes.OfType<ToleranceChange>());
    }

    [Fact]
    public void Nothing_is_changed_where_no_rules_are_written() => Assert.Empty(HouseLevels.Changes(Production("")));

    public static TheoryData<string> AllTolerances => [.. Tolerances.All.Select(t => t.Name)];

    [Theory]
    [MemberData(nameof(AllTolerances))]
    public void The_house_can_write_its_own_figure_and_read_it_again(string name)
    {
        var tolerance = Tolerances.Named(name)!;

        Assert.Equal(tolerance.UsualText, tolerance.Rewritten(tolerance.UsualText, Gauge.Film16));
        Assert.Matches(tolerance.Kind.Pattern, tolerance.UsualText);
    }

    [Theory]
    [InlineData("1/6", "1/6")]
    [InlineData("1.5", "1 1/2")]
    [InlineData("0.7", "0.7")]
    [InlineData("2", "2")]
    [InlineData("-1", null)]
    [InlineData("31", null)]
    [InlineData("some", null)]
    public void An_amount_of_stops_is_written_in_the_parts_that_lenses_have(string text, string? written) =>
        AssertRewritten(ToleranceKind.Stops, text, written);

    [Theory]
    [InlineData("20%", "20%")]
    [InlineData("0.2", "20%")]
    [InlineData("1/8", "12.5%")]
    [InlineData("101%", null)]
    public void A_part_of_a_whole_is_written_in_percent(string text, string? written) => AssertRewritten(ToleranceKind.Part, text, written);

    [Theory]
    [InlineData("90min", "90min")]
    [InlineData("120min", "2h")]
    [InlineData("45s", "45s")]
    [InlineData("0s", "0s")]
    [InlineData("2", null)]
    public void A_length_of_time_is_written_in_its_largest_whole_unit(string text, string? written) =>
        AssertRewritten(ToleranceKind.Time, text, written);

    [Theory]
    [InlineData("3", "3")]
    [InlineData("2.5", null)]
    [InlineData("1000000", null)]
    [InlineData("-1", null)]
    public void A_count_is_a_whole_number(string text, string? written) => AssertRewritten(ToleranceKind.Count, text, written);

    static void AssertRewritten<T>(ToleranceKind<T> kind, string text, string? written)
    {
        var tolerance = new Tolerance<T>("for-this-test", kind, default!, "", "");

        Assert.Equal(written, tolerance.Rewritten(text, Gauge.Film16));
        Assert.True(written is null || Regex.IsMatch(text, kind.Pattern));
    }

    static WholeRun Run(string rules, string roll) => WholeRun.Of(BaseProduction.With(roll + $"# production.yaml\nrules: {{{rules}}}\n"));

    static Production Production(string rules) =>
        ProductionReader.Read(BaseProduction.With($"# production.yaml\nrules: {{{rules}}}\n")).Production!;
}
