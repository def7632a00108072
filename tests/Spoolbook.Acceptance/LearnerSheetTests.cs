namespace Spoolbook.Acceptance;

/// <summary>What a learner is shown once, beside the ready list, which is ticked at every load.</summary>
public sealed class LearnerSheetTests(MadeSample sample) : IClassFixture<MadeSample>
{
    [Theory]
    [InlineData("Turret locked on the lens that shoots, before each take.")]
    [InlineData("Carry the camera with the main lens where nothing knocks it.")]
    [InlineData("hole 1: 25mm, hole 2: 10mm, hole 3: 75mm")]
    [InlineData("Loop formers closed to load, open again to run.")]
    [InlineData("Zero the counter once the door is closed, and reset the speed.")]
    [InlineData("Pass the empty spool on: it takes up the next roll.")]
    [InlineData("Load the practice roll until your hands do it on their own.")]
    [InlineData("Set the diopter on the grain of the ground glass. Whoever looks next sets it again.")]
    [InlineData("On a tripod, close the eyepiece when no eye is at it.")]
    [InlineData("Look for the triangle in the finder before you shoot.")]
    [InlineData("Switch to instantaneous to shoot; to time only to hold one frame open.")]
    [InlineData("The holder stays in when it is empty.")]
    [InlineData("After a good take, check the gate: a hair in it means go again.")]
    public void A_learner_is_shown_what_is_not_ticked_at_every_load(string line) =>
        Assert.Contains(line, sample.WordsOf("learner-sheets"), StringComparison.Ordinal);

    [Fact]
    public void What_can_ruin_a_roll_is_ticked_on_its_log_sheet_and_not_here()
    {
        string[] ready = ["gate clean", "loops set", "plate closed", "filter holder in", "trimmed end out", "run test, by ear"];

        Assert.Contains(string.Join(", ", ready), sample.WordsOf("learner-sheets"), StringComparison.Ordinal);
        Assert.All(ready, point => Assert.Contains(point, sample.WordsOf("log-sheets"), StringComparison.Ordinal));
    }
}
