using Spoolbook.Checks.Tests.Pages;
using Spoolbook.Reading.Files;

namespace Spoolbook.Checks.Tests;

/// <summary>Kits, days and loads that look wrong and are right: a false alarm is worse than a miss.</summary>
public class OddKitsTests
{
    // B. Brown, Cinematography: Theory and Practice, 2nd ed. 2011, lists 270 to 72; 165 is in a Kodak table; 133 is common practice.
    [Theory]
    [InlineData("270")]
    [InlineData("180")]
    [InlineData("172.8")]
    [InlineData("165")]
    [InlineData("144")]
    [InlineData("133")]
    [InlineData("90")]
    [InlineData("72")]
    public void A_shutter_that_a_source_lists_is_no_slip(string angle) =>
        AssertNone(
            $$"""
            # kit.yaml
            bodies:
              - {body: B1, speeds: [12, 16, 24, 32, 48, 64], shutter: {{angle}}, finder-loss: 20%, full-wind: 18ft, takes: 100ft}
            """
        );

    // I. Vásárhelyi, A keskenyfilmezés, 1965, has 20 %; 20 to 25 % is common practice.
    [Theory]
    [InlineData("20%")]
    [InlineData("25%")]
    public void A_prism_that_a_source_describes_is_no_slip(string loss) =>
        AssertNone(
            $$"""
            # kit.yaml
            bodies:
              - {body: B1, speeds: [12, 16, 24, 32, 48, 64], shutter: 133, finder-loss: {{loss}}, full-wind: 18ft, takes: 100ft}
            """
        );

    // Super 8 comes in closed cartridges, 16 mm on spools (common practice).
    [Theory]
    [InlineData("super8", 0)]
    [InlineData("16mm", 1)]
    public void Bright_light_gets_between_the_turns_of_a_spool_and_not_into_a_cartridge(string gauge, int flagged) =>
        Assert.Equal(
            flagged,
            WholeRun
                .Of(
                    TextFiles.OneFile(
                        $$"""
                        spoolbook: 1
                        title: The Ferry Light
                        code: FERRY
                        gauge: {{gauge}}
                        lots:
                          - {lot: D, stock: 50 D, ei: 50, balance: daylight, process: ecn-2, length: 50ft, units: 2}
                        rolls:
                          - roll: R1
                            lot: D
                            unit: 1
                            load: {on: 2026-10-02 09:00, light: bright, head: 0+00}
                            log:
                              - take: {scene: 1, shot: A, take: 1, to: 20+00, speed: 18, mark: good}
                        """
                    )
                )
                .Findings.Count(f => f.Check == "load/in-bright-light")
        );

    // 400 ft come on a core (Eastman Kodak, Student Filmmaker's Handbook, H-19), and go into a magazine.
    [Fact]
    public void Two_magazines_of_one_body_are_loaded_at_the_same_time() =>
        AssertNone(
            """
            # kit.yaml
            bodies:
              - {body: B1, speeds: [24, 25], shutter: 180, takes: 400ft}
            # rolls/r02.yaml
            roll: R02
            unit: 2
            load: {on: 2026-10-04 09:20, by: ana, light: subdued, head: 4+00, loops: set, plate: closed, speed-after: 24}
            log:
              - take: {scene: 2, shot: A, take: 1, to: 12+00, lens: 25mm, stop: 5.6, mark: good}
              - run-off: {to: 100+00, lens: capped}
            unload: {on: 2026-10-04 16:45, by: ana, light: subdued, tail: 2+00}
            """
        );

    [Fact]
    public void A_roll_goes_into_the_body_in_the_minute_in_which_the_last_came_out() =>
        AssertNone(
            """
            # rolls/r02.yaml
            roll: R02
            unit: 2
            load: {on: 2026-10-04 16:45, by: ana, light: subdued, head: 4+00, loops: set, plate: closed, speed-after: 24}
            log:
              - take: {scene: 2, shot: A, take: 1, to: 12+00, lens: 25mm, stop: 5.6, mark: good}
              - run-off: {to: 100+00, lens: capped}
            unload: {on: 2026-10-04 18:10, by: ana, light: subdued, tail: 2+00}
            """
        );

    [Fact]
    public void A_roll_that_is_out_for_a_while_leaves_the_body_to_another() =>
        AssertNone(
            """
            log:
              - take: {scene: 1, shot: A, take: 1, to: 12+00, lens: 25mm, stop: 5.6, mark: good, at: 10:00}
              - reload: {on: 2026-10-04 15:00, by: ana, body: B1, light: dark, zero-moved: 1+00, lost: 2+00, to: 13+00}
              - take: {scene: 1, shot: B, take: 1, to: 30+00, lens: 25mm, stop: 5.6, mark: good, at: 15:20}
              - run-off: {to: 99+00, lens: capped}
            # rolls/r02.yaml
            roll: R02
            unit: 2
            load: {on: 2026-10-04 11:00, by: ana, light: subdued, head: 4+00, loops: set, plate: closed, speed-after: 24}
            log:
              - take: {scene: 2, shot: A, take: 1, to: 12+00, lens: 25mm, stop: 5.6, mark: good}
              - run-off: {to: 100+00, lens: capped}
            unload: {on: 2026-10-04 13:10, by: ana, light: subdued, tail: 2+00}
            """
        );

    [Fact]
    public void A_camera_test_is_shot_on_a_day_before_the_first() =>
        AssertNone(
            """
            # production.yaml
            days:
              - {day: 1, on: 2026-10-06, where: The pier}
            # rolls/r01.yaml
            log:
              - take: {scene: T, take: 1, to: 12+00, lens: 25mm, stop: 5.6, mark: test}
              - take: {scene: 1, shot: A, take: 1, to: 20+00, lens: 25mm, stop: 5.6, mark: good, on: 2026-10-06}
              - run-off: {to: 100+00, lens: capped}
            unload: {on: 2026-10-06 16:45, by: ana, light: subdued, tail: 2+00}
            """
        );

    static void AssertNone(string example) => Assert.Equal("", WholeRun.Of(BaseProduction.With(example)).Report());
}
