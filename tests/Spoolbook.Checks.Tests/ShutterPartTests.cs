using Spoolbook.Checks.Tests.Pages;

namespace Spoolbook.Checks.Tests;

/// <summary>A shutter written as the part that is open counts in every check as its mark does.</summary>
public class ShutterPartTests
{
    const string Marks = "marks: [{mark: open, open: 1}, {mark: half, open: 1/2}, {mark: quarter, open: 3/4, stops: 1/2}]";

    static string[] Found(string take, string shutter = "133") =>
        [
            .. WholeRun
                .Of(
                    BaseProduction.With(
                        $$"""
                        log:
                          - take: {scene: 1, shot: A, take: 1, to: 12+00, lens: 25mm, mark: good, motor: E1, {{take}}}
                          - run-off: {to: 100+00, lens: capped}
                        # kit.yaml
                        bodies:
                          - {body: B1, slowest: 12, fastest: 64, shutter: {{shutter}}, {{Marks}}, full-wind: 18ft, takes: 100ft}
                        """
                    )
                )
                .Findings.Select(f => f.Check),
        ];

    // Half the light is one stop, so 11 by the meter is 8 on the lens.
    [Theory]
    [InlineData("1/2")]
    [InlineData("0.5")]
    [InlineData("50%")]
    [InlineData("half")]
    public void A_half_open_shutter_that_the_lens_does_not_make_up_for_is_flagged_however_it_is_written(string half)
    {
        Assert.Equal(["exposure/shutter-left-part-closed"], Found($"stop: 11, reading: 11, shutter: {half}"));
        Assert.Empty(Found($"stop: 8, reading: 11, shutter: {half}"));
    }

    [Theory]
    [InlineData("1/4", "5.6")]
    [InlineData("25%", "5.6")]
    [InlineData("quarter", "8/11")]
    public void A_lens_opened_by_what_the_shutter_takes_is_right(string shutter, string stop) =>
        Assert.Empty(Found($"stop: {stop}, reading: 11, shutter: {shutter}"));

    [Fact]
    public void A_take_far_under_its_reading_is_flagged_with_the_shutter_as_a_part() =>
        Assert.Equal(["exposure/under"], Found("stop: 22, reading: 8, shutter: 1/2"));

    // 172.8 degrees at 24 frames a second see whole pulses of 50 Hz lamps; three quarters of it do not.
    [Theory]
    [InlineData("172.8", "3/4", false)]
    [InlineData("230.4", "3/4", true)]
    [InlineData("230.4", "75%", true)]
    [InlineData("172.8", "1/2", true)]
    public void The_part_of_the_shutter_that_is_open_decides_on_flicker(string degrees, string part, bool isSafe) =>
        Assert.Equal(isSafe ? [] : ["speed/flicker-risk"], Found($"stop: 8, lamps: 50hz, shutter: {part}", degrees));
}
