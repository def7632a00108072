using Spoolbook.Checks.Tests.Pages;

namespace Spoolbook.Checks.Tests;

/// <summary>Speeds, springs and lamps that look wrong and are right: a false alarm is worse than a miss.</summary>
public class OddSpeedsTests
{
    const string Good = "lens: 25mm, stop: 5.6, mark: good";

    [Theory]
    [InlineData("25", "180", "50hz", true)]
    [InlineData("24", "172.8", "50hz", true)]
    [InlineData("24", "175", "50hz", true)]
    [InlineData("24", "180", "60hz", true)]
    [InlineData("24", "144", "60hz", true)]
    [InlineData("25", "150", "60hz", true)]
    [InlineData("50", "133", "50hz", true)]
    [InlineData("24", "180", "50hz", false)]
    [InlineData("24", "133", "50hz", false)]
    [InlineData("25", "180", "60hz", false)]
    [InlineData("48", "180", "50hz", false)]
    public void A_speed_and_shutter_that_see_whole_pulses_of_the_lamps_do_not_flicker(
        string speed,
        string shutter,
        string mains,
        bool isSafe
    ) =>
        Assert.Equal(
            isSafe ? [] : ["speed/flicker-risk"],
            Found(
                $$"""
                log:
                  - take: {scene: 1, shot: A, take: 1, to: 12+00, speed: {{speed}}, lamps: {{mains}}, motor: E1, {{Good}}}
                  - run-off: {to: 100+00, lens: capped}
                # kit.yaml
                bodies:
                  - {body: B1, slowest: 12, fastest: 64, shutter: {{shutter}}, finder-loss: 20%, full-wind: 18ft, takes: 100ft}
                motors:
                  - {motor: E1, speeds: [24, 25, 48, 50], sync: yes}
                """
            )
        );

    [Fact]
    public void Lamps_of_the_shot_list_light_all_its_takes_and_the_run_is_flagged_once() =>
        Assert.Equal(
            ["speed/flicker-risk"],
            Found(
                $$"""
                log:
                  - take: {scene: 1, shot: A, take: 1, to: 12+00, {{Good}}}
                  - take: {scene: 1, shot: A, take: 2, to: 20+00, {{Good}}}
                  - run-off: {to: 100+00, lens: capped}
                # production.yaml
                shots:
                  - {scene: 1, shot: A, screen: 4s, lamps: 50hz}
                """
            )
        );

    [Fact]
    public void Single_frames_and_time_lapse_have_no_beat_with_the_mains() =>
        AssertFine(
            $$"""
            log:
              - take: {scene: 1, shot: A, take: 1, to: 12+00, single-frame: twos, lamps: 50hz, {{Good}}}
              - take: {scene: 1, shot: B, take: 1, to: 20+00, interval: 5s, lamps: 50hz, {{Good}}}
              - run-off: {to: 100+00, lens: capped}
            """
        );

    [Fact]
    public void A_half_closed_shutter_changes_what_a_frame_sees() =>
        AssertFine(
            $$"""
            log:
              - take: {scene: 1, shot: A, take: 1, to: 12+00, shutter: half, motor: E1, lamps: 50hz, {{Good}}}
              - run-off: {to: 100+00, lens: capped}
            # kit.yaml
            bodies:
              - {body: B1, speeds: [16, 24], marks: [{mark: half, open: 1/2, stops: 1}], shutter: 172.8, finder-loss: 20%, full-wind: 18ft, takes: 100ft}
            """
        );

    [Fact]
    public void A_shot_tried_fast_and_slow_is_intentional_where_both_speeds_are_written() =>
        AssertFine(
            $$"""
            log:
              - take: {scene: 1, shot: A, take: 1, to: 8+00, speed: 24, {{Good}}}
              - take: {scene: 1, shot: A, take: 2, to: 12+00, speed: 48, {{Good}}}
              - take: {scene: 1, shot: A, take: 3, to: 16+00, speed: 12, {{Good}}}
              - take: {scene: 1, shot: A, take: 4, to: 20+00, {{Good}}}
              - run-off: {to: 100+00, lens: capped}
            """
        );

    [Fact]
    public void A_retake_at_normal_speed_of_a_shot_once_tried_slow_is_a_choice() =>
        AssertFine(
            $$"""
            log:
              - take: {scene: 1, shot: A, take: 1, to: 8+00, speed: 12, {{Good}}}
              - take: {scene: 1, shot: B, take: 1, to: 12+00, speed: 24, {{Good}}}
              - take: {scene: 1, shot: A, take: 2, to: 20+00, {{Good}}}
              - run-off: {to: 100+00, lens: capped}
            """
        );

    [Fact]
    public void A_day_of_slow_motion_writes_its_speed_once() =>
        AssertFine(
            $$"""
            log:
              - take: {scene: 1, shot: A, take: 1, to: 8+00, speed: 64, {{Good}}}
              - take: {scene: 1, shot: B, take: 1, to: 12+00, {{Good}}}
              - take: {scene: 1, shot: C, take: 1, to: 16+00, {{Good}}}
              - take: {scene: 1, shot: C, take: 2, to: 20+00, {{Good}}}
              - run-off: {to: 100+00, lens: capped}
            """
        );

    // A full wind drives 18 ft of film; the head is 4 ft.
    [Theory]
    [InlineData("wind: {}", "run-off: {to: 14+00, lens: capped}", "26+00", "speed/spring-overrun")]
    [InlineData("wind: {}", "run-off: {to: 14+00, lens: capped}", "20+00", null)]
    [InlineData("wind: {}", "run-off: {to: 60+00, lens: capped}", "72+00", null)]
    [InlineData("wind: {}", "run-off: {to: 60+00, lens: capped}", "79+00", "speed/spring-overrun")]
    [InlineData("note: Sun", "run-off: {to: 14+00, lens: capped}", "26+00", null)]
    public void Film_that_a_run_off_drove_is_off_the_wind(string before, string runOff, string to, string? found) =>
        Assert.Equal(
            found is null ? [] : [found],
            Found(
                $$"""
                log:
                  - {{before}}
                  - {{runOff}}
                  - take: {scene: 1, shot: A, take: 1, to: {{to}}, {{Good}}}
                  - run-off: {to: 100+00, lens: capped}
                """
            )
        );

    [Fact]
    public void Takes_before_the_first_winding_that_is_logged_are_added_up_from_a_full_wind() =>
        Assert.Equal(
            ["speed/spring-overrun"],
            Found(
                $$"""
                log:
                  - take: {scene: 1, shot: A, take: 1, to: 14+00, {{Good}}}
                  - take: {scene: 1, shot: B, take: 1, to: 24+00, {{Good}}}
                  - wind: {}
                  - take: {scene: 1, shot: C, take: 1, to: 34+00, {{Good}}}
                  - run-off: {to: 100+00, lens: capped}
                """
            )
        );

    [Theory]
    [InlineData("single-frame: twos")]
    [InlineData("interval: 5s")]
    [InlineData("wound: yes")]
    public void A_spring_that_is_wound_in_between_runs_as_long_as_it_likes(string how) =>
        AssertFine(
            $$"""
            log:
              - wind: {}
              - take: {scene: 1, shot: A, take: 1, to: 34+00, {{how}}, {{Good}}}
              - wind: {}
              - take: {scene: 1, shot: B, take: 1, to: 44+00, {{Good}}}
              - run-off: {to: 100+00, lens: capped}
            """
        );

    // A wind of 18 ft is 720 frames of 16 mm; half a foot of 20 frames is let pass, and flagged as near.
    [Theory]
    [InlineData(700, null)]
    [InlineData(701, "speed/spring-nearly-out")]
    [InlineData(740, "speed/spring-nearly-out")]
    [InlineData(741, "speed/spring-overrun")]
    public void No_length_falls_between_nearly_out_and_overrun(int frames, string? found) =>
        Assert.Equal(
            found is null ? [] : [found],
            Found(
                $$"""
                log:
                  - wind: {}
                  - take: {scene: 1, shot: A, take: 1, frames: {{frames}}fr, {{Good}}}
                  - run-off: {to: 100+00, lens: capped}
                """
            )
        );

    [Fact]
    public void A_take_that_overran_the_spring_is_flagged_for_that_alone() =>
        Assert.Equal(
            ["speed/spring-overrun"],
            Found(
                $$"""
                log:
                  - wind: {}
                  - take: {scene: 1, shot: A, take: 1, to: 21+35, {{Good}}}
                  - take: {scene: 1, shot: B, take: 1, to: 30+00, {{Good}}}
                  - run-off: {to: 100+00, lens: capped}
                """
            )
        );

    [Theory]
    [InlineData("single-frame: ones")]
    [InlineData("interval: 5s")]
    [InlineData("hand-cranked: yes")]
    [InlineData("motor: E1")]
    public void What_the_spring_does_not_keep_to_its_speed_may_run_it_down(string driven) =>
        Assert.DoesNotContain(
            "speed/spring-nearly-out",
            Found(
                $$"""
                log:
                  - wind: {}
                  - take: {scene: 1, shot: A, take: 1, to: 21+35, {{driven}}, {{Good}}}
                  - run-off: {to: 100+00, lens: capped}
                """
            )
        );

    [Fact]
    public void The_loading_speed_is_flagged_on_the_camera_before_the_first_take_and_on_the_take_after_it()
    {
        const string load =
            "load: {on: 2026-10-04 09:10, by: ana, light: subdued, head: 4+00, loops: set, plate: closed, speed-after: 16}\n";

        Assert.Equal(
            ["load/speed-not-reset"],
            Found(load + "log:\n  - take: {scene: T, take: 1, to: 5+00, lens: 25mm, stop: 5.6, mark: test}\nunload:\n")
        );
        Assert.Equal(
            ["speed/left-at-loading-speed"],
            Found(load + $"log:\n  - take: {{scene: 1, shot: A, take: 1, to: 12+00, {Good}}}\nunload:\n")
        );
        Assert.Empty(Found(load + $"log:\n  - take: {{scene: 1, shot: A, take: 1, to: 12+00, speed: 24, {Good}}}\nunload:\n"));
        Assert.Empty(
            Found(
                load
                    + $"log:\n  - take: {{scene: T, take: 1, to: 5+00, lens: 25mm, stop: 5.6, mark: test}}\n  - take: {{scene: 1, shot: "
                    + $"A, take: 1, to: 12+00, speed: 24, {Good}}}\nunload:\n"
            )
        );
        Assert.Empty(Found(load + "log: []\nunload:\n# production.yaml\nproject-at: 16\n"));
    }

    [Fact]
    public void Who_works_alone_need_not_say_who_loaded() =>
        AssertFine("load: {on: 2026-10-04 09:10, light: subdued, head: 4+00, loops: set, plate: closed, speed-after: 24}");

    static void AssertFine(string example) => Assert.Equal("", WholeRun.Of(BaseProduction.With(example)).Report());

    static IEnumerable<string> Found(string example) => WholeRun.Of(BaseProduction.With(example)).Findings.Select(f => f.Check);
}
