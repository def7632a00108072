using Spoolbook.Checks.Tests.Pages;

namespace Spoolbook.Checks.Tests;

/// <summary>Lengths that look wrong and are right: a false alarm is worse than a miss.</summary>
public class OddLengthsTests
{
    const string Take = "lens: 25mm, stop: 5.6, mark: good";

    [Fact]
    public void Film_run_on_in_the_second_pass_is_no_gap() =>
        AssertFine(
            $$"""
            log:
              - take: {scene: 1, shot: A, take: 1, to: 12+00, exposed: -1, {{Take}}}
              - take: {scene: 1, shot: B, take: 1, to: 28+00, exposed: -1, {{Take}}}
              - rewind: {to: 4+00, shutter: closed, counter-zeroed: yes}
              - take: {scene: 1, shot: C, take: 1, from: 12+00, to: 28+00, exposed: -1, {{Take}}}
              - run-off: {to: 100+00, lens: capped}
            """
        );

    [Fact]
    public void A_foot_between_takes_read_off_the_dial_is_no_gap() =>
        AssertFine(
            $$"""
            log:
              - take: {scene: 1, shot: A, take: 1, to: 12+00, {{Take}}}
              - take: {scene: 1, shot: A, take: 2, from: 13+00, to: 22+00, {{Take}}}
              - take: {scene: 1, shot: A, take: 3, from: 24+00, to: 30+00, {{Take}}}
              - run-off: {to: 100+00, lens: capped}
            """
        );

    [Theory]
    [InlineData("note: Ran on past the hair in the gate,", "")]
    [InlineData("", "note: The first feet are the gate test,")]
    public void A_gap_with_a_word_beside_it_is_explained(string before, string after) =>
        AssertFine(
            $$"""
            log:
              - take: {scene: 1, shot: A, take: 1, to: 12+00, {{before}} {{Take}}}
              - wind: {}
              - take: {scene: 1, shot: A, take: 2, from: 20+00, to: 28+00, {{after}} {{Take}}}
              - run-off: {to: 100+00, lens: capped}
            """
        );

    [Fact]
    public void A_head_without_an_entry_on_a_roll_threaded_in_the_dark_is_no_gap() =>
        AssertFine(
            $$"""
            load: {on: 2026-10-04 09:10, by: ana, light: dark, loops: set, plate: closed, speed-after: 24}
            log:
              - take: {scene: 1, shot: A, take: 1, from: 6+00, to: 12+00, {{Take}}}
              - run-off: {to: 100+00, lens: capped}
            """
        );

    [Fact]
    public void Nobody_knows_what_ran_through_in_a_reload_without_a_mark() =>
        Assert.Equal(
            ["load/re-thread-unmarked"],
            Found(
                $$"""
                log:
                  - take: {scene: 1, shot: A, take: 1, to: 12+00, {{Take}}}
                  - reload: {on: 2026-10-04 13:40, by: ana, body: B1, light: dark, lost: 2+00}
                  - take: {scene: 1, shot: B, take: 1, from: 20+00, to: 30+00, {{Take}}}
                  - run-off: {to: 100+00, lens: capped}
                """
            )
        );

    [Fact]
    public void A_short_end_that_was_shot_on_was_long_enough() =>
        AssertFine(
            $$"""
            log:
              - take: {scene: 1, shot: A, take: 1, to: 12+00, {{Take}}}
              - run-off: {to: 90+00, lens: capped}
            unload: {on: 2026-10-04 16:45, by: ana, light: dark, tail: 1+00, short-end: kept}
            {{ShortEnd("9ft", "8+00")}}
            """
        );

    [Theory]
    [InlineData("76ft")]
    [InlineData("82ft")]
    public void A_short_end_is_measured_by_eye(string length) => AssertFine(CutFrom(length));

    [Theory]
    [InlineData("88ft", "longer")]
    [InlineData("60ft", "was not loaded")]
    public void A_short_end_is_as_long_as_what_was_left(string length, string told) =>
        Assert.Contains(told, Assert.Single(WholeRun.Of(BaseProduction.With(CutFrom(length))).Findings).Message, StringComparison.Ordinal);

    [Fact]
    public void A_short_end_without_a_length_is_as_long_as_what_was_left() => AssertFine(CutFrom(""));

    [Fact]
    public void A_short_end_of_a_roll_with_nothing_left_is_flagged_even_without_a_length() =>
        Assert.Equal(["length/does-not-balance"], Found(ShortEnd("", "12+00")));

    [Fact]
    public void What_was_thrown_away_is_not_loaded() =>
        Assert.Contains(
            "thrown away",
            Assert
                .Single(WholeRun.Of(BaseProduction.With(CutFrom("78ft").Replace("kept", "thrown", StringComparison.Ordinal))).Findings)
                .Message,
            StringComparison.Ordinal
        );

    [Fact]
    public void Two_swapped_digits_are_flagged_once_although_every_later_reading_is_out() =>
        Assert.Equal(
            ["length/dial-differs"],
            Found(
                $$"""
                log:
                  - take: {scene: 1, shot: A, take: 1, to: 12+00, dial: 12ft, {{Take}}}
                  - take: {scene: 1, shot: B, take: 1, to: 29+00, dial: 20ft, {{Take}}}
                  - take: {scene: 1, shot: C, take: 1, to: 40+00, dial: 31ft, {{Take}}}
                  - take: {scene: 1, shot: D, take: 1, to: 52+00, dial: 43ft, {{Take}}}
                  - run-off: {to: 100+00, lens: capped}
                """
            )
        );

    [Fact]
    public void Where_the_frame_counter_shows_a_slip_the_dial_is_not_flagged() =>
        Assert.Equal(
            ["counter/count-differs"],
            Found(
                $$"""
                log:
                  - take: {scene: 1, shot: A, take: 1, to: 12+00, dial: 12ft, counter: 320, {{Take}}}
                  - take: {scene: 1, shot: B, take: 1, to: 29+00, dial: 20ft, counter: 640, {{Take}}}
                  - run-off: {to: 100+00, lens: capped}
                """
            )
        );

    [Fact]
    public void A_dial_that_always_reads_a_foot_short_does_not_drift() =>
        AssertFine(
            $$"""
            log:
              - take: {scene: 1, shot: A, take: 1, to: 12+00, dial: 11ft, {{Take}}}
              - take: {scene: 1, shot: B, take: 1, to: 28+00, dial: 27ft, {{Take}}}
              - take: {scene: 1, shot: C, take: 1, to: 45+00, dial: 44ft, {{Take}}}
              - run-off: {to: 100+00, dial: 99ft, lens: capped}
            """
        );

    static string CutFrom(string length) =>
        $$"""
            log:
              - take: {scene: 1, shot: A, take: 1, to: 20+00, {{Take}}}
            unload: {on: 2026-10-04 16:45, by: ana, light: dark, tail: 2+00, short-end: kept}
            {{ShortEnd(length, "20+00")}}
            """;

    static string ShortEnd(string length, string to) =>
        $$"""
            # rolls/r02.yaml
            roll: R02
            lot:
            unit:
            short-end-of: R01
            length: {{length}}
            load: {on: 2026-10-05 09:10, by: ana, light: dark, head: 4+00, loops: set, plate: closed, speed-after: 24}
            log:
              - take: {scene: 2, shot: A, take: 1, from: 4+00, to: {{to}}, {{Take}}}
              - run-off: {to: {{(length.Length > 0 ? length : "78ft")}}, lens: capped}
            unload: {on: 2026-10-05 16:45, by: ana, light: subdued, tail: 1+00}
            """;

    static void AssertFine(string example) => Assert.Equal("", WholeRun.Of(BaseProduction.With(example)).Report());

    static IEnumerable<string> Found(string example) => WholeRun.Of(BaseProduction.With(example)).Findings.Select(f => f.Check);
}
