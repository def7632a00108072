using Spoolbook.Checks.Tests.Pages;

namespace Spoolbook.Checks.Tests;

/// <summary>Slates and times that look wrong and are right: a false alarm is worse than a miss.</summary>
public class OddSlatesTests
{
    const string Half = "lens: 25mm, stop: 5.6";
    const string Good = Half + ", mark: good";

    [Fact]
    public void Pick_ups_are_shot_out_of_order_days_later() =>
        AssertFine(
            $$"""
            log:
              - take: {scene: 9, shot: C, take: 1, to: 8+00, at: 10:00, {{Good}}}
              - take: {scene: 9, shot: A, take: 1, to: 12+00, at: 11:00, {{Good}}}
              - take: {scene: 2, shot: B, take: 1, to: 16+00, at: 12:00, {{Good}}}
              - take: {scene: 2, shot: A, take: 1, to: 20+00, at: 13:00, {{Good}}}
              - take: {scene: 9, shot: B, take: 1, to: 30+00, on: 2026-10-06, at: 08:00, {{Good}}}
              - run-off: {to: 100+00, lens: capped}
            unload: {on: 2026-10-06 16:45, by: ana, light: subdued, tail: 2+00}
            """
        );

    [Fact]
    public void A_shot_goes_on_counting_on_another_roll() =>
        AssertFine(
            $$"""
            log:
              - take: {scene: 1, shot: A, take: 3, to: 12+00, {{Good}}}
              - take: {scene: 1, shot: A, take: 4, to: 20+00, {{Good}}}
              - run-off: {to: 100+00, lens: capped}
            # rolls/r02.yaml
            roll: R02
            unit: 2
            log:
              - take: {scene: 1, shot: A, take: 1, to: 12+00, {{Good}}}
              - take: {scene: 1, shot: A, take: 2, to: 20+00, {{Good}}}
              - run-off: {to: 100+00, lens: capped}
            """
        );

    [Fact]
    public void A_slate_reused_for_a_wild_take_and_accepted_has_no_other_finding() =>
        AssertFine(
            $$"""
            log:
              - take: {scene: 1, shot: A, take: 1, to: 8+00, {{Good}}}
              - take: {scene: 1, shot: A, take: 2, to: 12+00, {{Good}}}
              - take: {scene: 1, shot: A, take: 1, to: 20+00, note: Wild, {{Good}}}
              - take: {scene: 1, shot: A, take: 3, to: 24+00, {{Good}}}
              - run-off: {to: 100+00, lens: capped}
            accept:
              - {check: counter/take-repeated, take: 1A/1, reason: Wild take on the old slate, by: ana}
            """
        );

    [Fact]
    public void A_repeated_number_leaves_a_gap_that_is_not_flagged_as_well() =>
        Assert.Equal(
            ["counter/take-repeated"],
            Found(
                $$"""
                log:
                  - take: {scene: 1, shot: A, take: 1, to: 8+00, {{Good}}}
                  - take: {scene: 1, shot: A, take: 1, to: 12+00, {{Good}}}
                  - take: {scene: 1, shot: A, take: 3, to: 20+00, {{Good}}}
                  - run-off: {to: 100+00, lens: capped}
                """
            )
        );

    [Theory]
    [InlineData("1", "A", "5", "3", "counter/slate-out-of-order")]
    [InlineData("1", "B", "2", "3", "counter/slate-out-of-order")]
    [InlineData("1", "A", "3", "3", "counter/take-repeated")]
    [InlineData("1", "A", "2", "4", "counter/take-skipped")]
    [InlineData("1", "A", "2", "1", "counter/take-repeated")]
    [InlineData("8", "A", "2", "3", "counter/slate-out-of-order")]
    public void One_slip_of_the_pen_in_a_slate_is_flagged_once(string scene, string shot, string second, string third, string told) =>
        Assert.Equal(
            told.Split(' ').Order(),
            Found(
                    $$"""
                    log:
                      - take: {scene: 1, shot: A, take: 1, to: 8+00, {{Good}}}
                      - take: {scene: {{scene}}, shot: {{shot}}, take: {{second}}, to: 12+00, {{Good}}}
                      - take: {scene: 1, shot: A, take: {{third}}, to: 20+00, {{Good}}}
                      - run-off: {to: 100+00, lens: capped}
                    # production.yaml
                    shots:
                      - {scene: 1, shot: A, screen: 4s}
                    """
                )
                .Order()
        );

    [Fact]
    public void A_test_is_slated_as_one_likes() =>
        AssertFine(
            $$"""
            log:
              - take: {scene: T, take: 7, to: 5+00, {{Half}}, mark: test}
              - take: {scene: T, take: 2, to: 6+00, {{Half}}, mark: test}
              - take: {scene: 1, shot: A, take: 1, to: 20+00, {{Good}}}
              - run-off: {to: 100+00, lens: capped}
            """
        );

    [Theory]
    [InlineData("note: Slate 2 was a false start", "")]
    [InlineData("", "note: slate says 3 and there is no 2")]
    public void A_word_on_a_neighbour_that_names_the_number_explains_it(string before, string after) =>
        AssertFine(
            $$"""
            log:
              - take: {scene: 1, shot: A, take: 1, to: 8+00, {{before}}, {{Good}}}
              - take: {scene: 1, shot: A, take: 3, to: 12+00, {{after}}, {{Good}}}
              - run-off: {to: 100+00, lens: capped}
            """.Replace(", ,", ",", StringComparison.Ordinal)
        );

    [Fact]
    public void Two_set_ups_in_turn_may_keep_their_own_numbers() =>
        AssertFine(
            $$"""
            log:
              - take: {scene: 1, shot: A, take: 1, to: 8+00, {{Good}}}
              - take: {scene: 1, shot: B, take: 1, to: 12+00, {{Good}}}
              - take: {scene: 1, shot: A, take: 2, to: 16+00, {{Good}}}
              - take: {scene: 1, shot: B, take: 2, to: 20+00, {{Good}}}
              - take: {scene: 1, shot: A, take: 3, to: 24+00, {{Good}}}
              - run-off: {to: 100+00, lens: capped}
            """
        );

    [Fact]
    public void A_letter_that_abbreviates_a_word_is_no_letter_of_a_series() =>
        AssertFine(
            $$"""
            log:
              - take: {scene: 1, shot: A, take: 1, to: 8+00, {{Good}}}
              - take: {scene: 1, shot: P, take: 1, to: 12+00, {{Good}}}
              - take: {scene: 2, shot: CU, take: 1, to: 16+00, {{Good}}}
              - take: {scene: 2, shot: Ж, take: 1, to: 20+00, {{Good}}}
              - run-off: {to: 100+00, lens: capped}
            """
        );

    [Fact]
    public void A_shot_that_was_left_off_the_list_is_not_missed() =>
        AssertFine(
            $$"""
            log:
              - take: {scene: 1, shot: A, take: 1, to: 8+00, {{Good}}}
              - take: {scene: 1, shot: C, take: 1, to: 12+00, {{Good}}}
              - run-off: {to: 100+00, lens: capped}
            # production.yaml
            shots:
              - {scene: 1, shot: A, screen: 4s}
              - {scene: 1, shot: C, screen: 4s}
            """
        );

    [Fact]
    public void A_night_is_shot_past_midnight() =>
        AssertFine(
            $$"""
            load: {on: 2026-10-04 20:10, by: ana, light: subdued, head: 4+00, loops: set, plate: closed, speed-after: 24}
            log:
              - take: {scene: 1, shot: A, take: 1, to: 12+00, at: 23:40, {{Good}}}
              - take: {scene: 1, shot: B, take: 1, to: 16+00, at: 00:20, {{Good}}}
              - take: {scene: 1, shot: C, take: 1, to: 20+00, at: 02:05, {{Good}}}
              - run-off: {to: 100+00, lens: capped, at: 02:10}
            unload: {on: 2026-10-05 02:45, by: ana, light: subdued, tail: 2+00}
            """
        );

    [Fact]
    public void A_night_is_shot_past_sunrise() =>
        AssertFine(
            $$"""
            load: {on: 2026-10-05 02:10, day: 2026-10-04, by: ana, light: subdued, head: 4+00, loops: set, plate: closed, speed-after: 24}
            log:
              - take: {scene: 1, shot: A, take: 1, to: 12+00, at: 03:40, day: 2026-10-04, {{Good}}}
              - take: {scene: 1, shot: B, take: 1, to: 16+00, at: 05:50, {{Good}}}
              - take: {scene: 1, shot: C, take: 1, to: 20+00, at: 06:20, {{Good}}}
              - run-off: {to: 100+00, lens: capped, at: 06:30}
            unload: {on: 2026-10-05 06:45, by: ana, light: subdued, tail: 2+00}
            """
        );

    [Fact]
    public void Two_watches_do_not_agree_to_the_minute() =>
        AssertFine(
            $$"""
            log:
              - take: {scene: 1, shot: A, take: 1, to: 12+00, at: 10:02, {{Good}}}
              - wind: {at: 10:00}
              - take: {scene: 1, shot: B, take: 1, to: 20+00, at: 09:59, {{Good}}}
              - run-off: {to: 100+00, lens: capped}
            """
        );

    [Fact]
    public void Nobody_writes_the_day_beside_a_winding_on_the_second_morning() =>
        AssertFine(
            $$"""
            log:
              - take: {scene: 1, shot: A, take: 1, to: 12+00, at: 17:30, {{Good}}}
              - wind: {at: 08:10}
              - take: {scene: 1, shot: B, take: 1, to: 20+00, on: 2026-10-05, at: 08:20, {{Good}}}
              - run-off: {to: 100+00, lens: capped, at: 09:00}
            unload: {on: 2026-10-05 16:45, by: ana, light: subdued, tail: 2+00}
            """
        );

    [Fact]
    public void The_one_time_that_runs_ahead_is_flagged() =>
        Assert.Equal(
            "19:52",
            Marked(
                $$"""
                log:
                  - take: {scene: 1, shot: A, take: 1, to: 8+00, at: 09:40, {{Good}}}
                  - take: {scene: 1, shot: B, take: 1, to: 12+00, at: 19:52, {{Good}}}
                  - take: {scene: 1, shot: C, take: 1, to: 16+00, at: 10:04, {{Good}}}
                  - take: {scene: 1, shot: D, take: 1, to: 20+00, at: 10:18, {{Good}}}
                  - run-off: {to: 100+00, lens: capped}
                """
            )
        );

    [Fact]
    public void A_day_that_was_left_off_is_flagged_once_and_not_for_every_take_of_it() =>
        Assert.Equal(
            ["counter/time-out-of-order"],
            Found(
                $$"""
                log:
                  - take: {scene: 1, shot: A, take: 1, to: 8+00, at: 16:40, {{Good}}}
                  - take: {scene: 1, shot: B, take: 1, to: 12+00, at: 17:20, {{Good}}}
                  - take: {scene: 1, shot: C, take: 1, to: 16+00, at: 17:30, {{Good}}}
                  - take: {scene: 1, shot: D, take: 1, to: 18+00, at: 09:18, {{Good}}}
                  - take: {scene: 1, shot: E, take: 1, to: 20+00, at: 09:28, {{Good}}}
                  - run-off: {to: 100+00, lens: capped}
                unload: {on: 2026-10-05 16:45, by: ana, light: subdued, tail: 2+00}
                """
            )
        );

    [Fact]
    public void A_roll_is_unloaded_after_it_was_loaded() =>
        Assert.Equal(["counter/time-out-of-order"], Found("unload: {on: 2026-10-03 16:45, by: ana, light: subdued, tail: 2+00}"));

    static void AssertFine(string example) => Assert.Equal("", WholeRun.Of(BaseProduction.With(example)).Report());

    static IEnumerable<string> Found(string example) => WholeRun.Of(BaseProduction.With(example)).Findings.Select(f => f.Check);

    static string Marked(string example)
    {
        var run = WholeRun.Of(BaseProduction.With(example));
        var place = Assert.Single(run.Findings).Place;
        return run.Sources.Line(place.File, place.Line)!.Substring(place.Column - 1, place.Length);
    }
}
