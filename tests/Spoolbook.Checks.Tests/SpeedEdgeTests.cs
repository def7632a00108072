using Spoolbook.Checks.Tests.Pages;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Tests;

/// <summary>Speeds: just inside what a body or a motor runs at nothing is said, just outside it something is.</summary>
public class SpeedEdgeTests
{
    const string Dial = "speeds: [12, 24, 64]";
    const string Wider = "speeds: [12, 24, 64], slowest: 8, fastest: 80";

    [Theory]
    [InlineData(Dial, 12, "")]
    [InlineData(Dial, 11, "runs no slower than 12")]
    [InlineData(Dial, 64, "")]
    [InlineData(Dial, 65, "runs no faster than 64")]
    [InlineData(Wider, 8, "")]
    [InlineData(Wider, 7, "runs no slower than 8")]
    [InlineData(Wider, 80, "")]
    [InlineData(Wider, 81, "runs no faster than 80")]
    public void A_take_and_a_camera_just_loaded_are_set_to_a_speed_of_the_body(string speeds, int speed, string says)
    {
        foreach (
            var (logged, begins) in new[]
            {
                (Log($"speed: {speed}, "), "Take 1A/1 is logged at"),
                (Load(speed) + Log("speed: 24, "), "After loading roll R01 the camera was set to"),
            }
        )
        {
            var found = OutOfRange($"{Body(speeds)}# rolls/r01.yaml\n{logged}").ToList();
            Assert.Equal(says.Length == 0 ? 0 : 1, found.Count);
            Assert.All(found, f =>
            {
                Assert.StartsWith(begins, f.Message, StringComparison.Ordinal);
                Assert.EndsWith(says, f.Message, StringComparison.Ordinal);
            });
        }
    }

    [Theory]
    [InlineData(7, "slowest")]
    [InlineData(81, "fastest")]
    public void The_figure_that_was_passed_is_shown(int speed, string key)
    {
        var files = BaseProduction.With(
            "# kit.yaml\nbodies:\n  - body: B1\n    speeds: [12, 24, 64]\n    slowest: 8\n    fastest: 80\n# rolls/r01.yaml\n"
                + Log($"speed: {speed}, ")
        );
        var lines = files.Open("kit.yaml").Text!.Split('\n');
        var finding = Assert.Single(WholeRun.Of(files).Findings, f => f.Check == "speed/out-of-range");
        Assert.StartsWith($"    {key}:", lines[Assert.Single(finding.Others).Place.Line - 1], StringComparison.Ordinal);
        Assert.Equal(["8", "80"], finding.Figures.Skip(1).Select(figure => figure.Value.ToString()));
    }

    // The motor turns the camera, whatever the dial says.
    [Theory]
    [InlineData("", 1)]
    [InlineData("motor: E2, ", 0)]
    public void The_dial_after_loading_counts_where_the_spring_drives_it(string motor, int flagged) =>
        Assert.Equal(
            flagged,
            OutOfRange($"{Body(Dial)}# rolls/r01.yaml\n{Load(8)}{Log("speed: 24, " + motor)}")
                .Count(f => f.Message.StartsWith("After", StringComparison.Ordinal))
        );

    // A motor that holds its speed has those of its switch; one that does not has any between them.
    [Theory]
    [InlineData("[24, 25], sync: yes", "25", "")]
    [InlineData("[24, 25], sync: yes", "24.5", "Take 1A/1 ran at 24.5 frames a second, but the motor E3 does not")]
    [InlineData("[24, 25], sync: no", "24.5", "")]
    [InlineData("[24, 25]", "24.5", "")]
    [InlineData("[12, 48], sync: no", "12", "")]
    [InlineData("[12, 48], sync: no", "48", "")]
    [InlineData("[14, 48], sync: no", "12", "Take 1A/1 ran at 12 frames a second, but the motor E3 does not")]
    [InlineData("[12, 48], sync: no", "50", "Take 1A/1 ran at 50 frames a second, but the motor E3 does not")]
    public void A_motor_runs_at_its_own_speeds(string motor, string speed, string says) =>
        Assert.Equal(
            says.Length == 0 ? [] : [says],
            OutOfRange($"{Motor(motor)}# rolls/r01.yaml\n{Log($"speed: {speed}, motor: E3, ")}").Select(f => f.Message)
        );

    [Fact]
    public void A_take_that_keeps_a_speed_which_its_motor_does_not_have_says_so() =>
        Assert.Equal(
            ["Take 1B/1 keeps 48 frames a second from the take before, but the motor E3 does not run at that"],
            OutOfRange($"{Motor("[24], sync: yes")}# rolls/r01.yaml\n{Log("speed: 48, ", "motor: E3, ")}").Select(f => f.Message)
        );

    // Of 50 Hz, whole pulses of light come at 25 and 20 frames a second, with any shutter (half cycles over whole numbers, computed).
    [Theory]
    [InlineData("speeds: [12, 24]", "20 frames a second")]
    [InlineData("speeds: [12, 24], fastest: 25", "25 frames a second")]
    [InlineData("speeds: [24]", "")]
    [InlineData("speeds: [24], slowest: 20", "20 frames a second")]
    [InlineData("speeds: [24], fastest: 30", "25 frames a second")]
    [InlineData("speeds: [16, 32]", "25 frames a second")]
    public void A_safe_speed_is_one_that_the_body_has(string speeds, string safe) =>
        Assert.Equal(
            safe.Length == 0 ? [] : [safe],
            Flicker($"{Body(speeds)}# rolls/r01.yaml\n{Log("speed: 24, motor: E1, lamps: 50hz, ")}")
                .Figures.Where(figure => figure.Name.ToString() == "safe with any shutter")
                .Select(figure => figure.Value.ToString())
        );

    [Theory]
    [InlineData("motor: E1, ", true)]
    [InlineData("motor: E2, ", false)]
    [InlineData("", false)]
    public void No_speed_is_safe_that_nothing_holds(string motor, bool held) =>
        Assert.Equal(
            held,
            Flicker($"# rolls/r01.yaml\n{Log($"speed: 24, {motor}lamps: 50hz, ")}")
                .Help.StartsWith("Reshoot at a safe speed or shutter, with", StringComparison.Ordinal)
        );

    static string Body(string keys) => $"# kit.yaml\nbodies: [{{body: B1, shutter: 133, takes: 100ft, {keys}}}]\n";

    static string Motor(string speeds) => $"# kit.yaml\nmotors: [{{motor: E3, speeds: {speeds}}}]\n";

    static string Load(int speed) =>
        $"load: {{on: 2026-10-04 09:10, by: ana, light: subdued, head: 4+00, loops: set, plate: closed, speed-after: {speed}}}\n";

    static string Log(string first, string second = "") =>
        $"log:\n  - take: {{scene: 1, shot: A, take: 1, to: 12+00, {first}lens: 25mm, stop: 5.6, mark: good}}\n"
        + $"  - take: {{scene: 1, shot: B, take: 1, to: 20+00, {second}lens: 25mm, stop: 5.6, mark: good}}\n"
        + "  - run-off: {to: 100+00, lens: capped}\n";

    static IEnumerable<Finding> OutOfRange(string example) =>
        WholeRun.Of(BaseProduction.With(example)).Findings.Where(f => f.Check == "speed/out-of-range");

    static Finding Flicker(string example) =>
        WholeRun.Of(BaseProduction.With(example)).Findings.First(f => f.Check == "speed/flicker-risk");
}
