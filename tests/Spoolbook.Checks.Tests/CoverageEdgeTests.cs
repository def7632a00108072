using Spoolbook.Checks.Tests.Pages;

namespace Spoolbook.Checks.Tests;

/// <summary>Shot list, running time and takes: just inside a limit nothing is said, just outside it something is.</summary>
public class CoverageEdgeTests
{
    // A quarter of the running time is what boards may be out (common practice): of 40 s, from 30 to 50.
    [Theory]
    [InlineData("25s", "25s", null)]
    [InlineData("25s", "26s", "more")]
    [InlineData("15s", "15s", null)]
    [InlineData("15s", "14s", "less")]
    public void Boards_that_are_a_quarter_off_the_running_time_are_flagged(string one, string other, string? how)
    {
        var found = Found("cover/screen-differs", $"shots: [{Shot("A", one)}, {Shot("B", other)}]\nplan: {{running-time: 40s}}");

        Assert.Equal(how is null ? 0 : 1, found.Count());
        var says = how == "more" ? "add up to 51 s" : "add up to only 29 s";
        Assert.All(found, f => Assert.Contains(says, f.Message, StringComparison.Ordinal));
    }

    [Fact]
    public void Where_one_shot_has_no_time_on_the_board_nobody_can_add_up() =>
        Assert.Empty(
            Found("cover/screen-differs", "shots: [{scene: 1, shot: A, screen: 90s}, {scene: 1, shot: B}]\nplan: {running-time: 40s}")
        );

    // A third is no matter of taste (common practice). Take 1A/1 of the base runs 8 ft: 13 1/3 s at 24 (computed).
    [Theory]
    [InlineData("40s", 0)]
    [InlineData("40.1s", 1)]
    public void A_shot_of_which_less_than_a_third_was_got_is_flagged(string screen, int flagged) =>
        Assert.Equal(flagged, Found("cover/takes-too-short", $"shots: [{Shot("A", screen)}, {{scene: 1, shot: B}}]").Count());

    [Theory]
    [InlineData("stop: 5.6, focus: 6ft, reading: 8", "stop: 5.6, focus: 6ft, reading: 8", 1)]
    [InlineData("stop: 5.6, focus: 6ft, reading: 8", "stop: 5.6, focus: 6ft", 1)]
    [InlineData("stop: 5.6, focus: 6ft", "stop: 5.6, focus: 6ft, reading: 8", 1)]
    [InlineData("stop: 5.6, focus: 6ft, reading: 8", "stop: 5.6, focus: 6ft, reading: 5.6", 0)] // measured again
    [InlineData("stop: 5.6, focus: 6ft", "stop: 8, focus: 6ft", 0)]
    [InlineData("stop: 5.6, focus: 6ft", "stop: 5.6, focus: 9ft", 0)]
    public void A_lens_alone_is_not_changed_between_two_takes_of_a_shot(string before, string after, int flagged) =>
        Assert.Equal(flagged, LensChanged($"lens: 25mm, {before}", $"lens: 75mm, {after}"));

    [Theory]
    [InlineData("lens: 25mm", "lens: 99mm")] // not in the kit, which is a finding of its own
    [InlineData("lens: 99mm", "lens: 25mm")]
    [InlineData("lens: 25mm", "mute: yes")]
    [InlineData("mute: yes", "lens: 25mm")]
    public void A_lens_that_nobody_knows_was_not_changed(string before, string after) =>
        Assert.Equal(0, LensChanged($"{before}, stop: 5.6", $"{after}, stop: 5.6"));

    [Theory]
    [InlineData("ng", null, "was shot once")]
    [InlineData("ng", "ng", "was shot 2 times")]
    [InlineData("ng", "hold", null)]
    [InlineData("good", null, null)]
    [InlineData("test", null, null)]
    public void A_shot_without_a_take_to_use_is_flagged_by_how_often_it_was_tried(string first, string? second, string? says)
    {
        var takes =
            $"# rolls/r01.yaml\nlog:\n  - take: {{scene: 1, shot: A, take: 1, to: 12+00, lens: 25mm, stop: 5.6, mark: {first}}}\n"
            + (second is null ? "" : $"  - take: {{scene: 1, shot: A, take: 2, to: 20+00, lens: 25mm, stop: 5.6, mark: {second}}}\n");
        var found = Found("cover/shot-without-good-take", $"shots: [{{scene: 1, shot: A}}]\n{takes}");

        Assert.Equal(says is null ? 0 : 1, found.Count());
        Assert.All(found, f => Assert.Contains(says!, f.Message, StringComparison.Ordinal));
    }

    // The good take may be on it.
    [Fact]
    public void While_a_roll_cannot_be_read_no_shot_is_without_a_good_take() =>
        Assert.Empty(
            Found(
                "cover/shot-without-good-take",
                """
                shots: [{scene: 1, shot: A}]
                # rolls/r01.yaml
                log:
                  - take: {scene: 1, shot: A, take: 1, to: 12+00, mark: ng}
                # rolls/r02.yaml
                roll: R02
                unit: 2
                load: {on: when, by: ana}
                """
            )
        );

    static int LensChanged(string before, string after) =>
        Found(
                "cover/lens-changed",
                $"""
                # rolls/r01.yaml
                log:
                  - take: {"{"}scene: 1, shot: A, take: 1, to: 12+00, {before}, mark: ng{"}"}
                  - take: {"{"}scene: 1, shot: A, take: 2, to: 20+00, {after}, mark: good{"}"}
                """
            )
            .Count();

    static string Shot(string shot, string screen) => $"{{scene: 1, shot: {shot}, screen: {screen}}}";

    static IEnumerable<Shoot.Findings.Finding> Found(string check, string example) =>
        WholeRun.Of(BaseProduction.With($"# production.yaml\n{example}")).Findings.Where(f => f.Check == check);
}
