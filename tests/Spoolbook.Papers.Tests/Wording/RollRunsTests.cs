using Spoolbook.Papers.Wording;

namespace Spoolbook.Papers.Tests.Wording;

public class RollRunsTests
{
    [Theory]
    [InlineData("R01", "R01")]
    [InlineData("R01, R02", "R01 R02")]
    [InlineData("R01–R03", "R01 R02 R03")]
    [InlineData("R01–R04, R06", "R01 R02 R03 R04 R06")]
    [InlineData("R8–R10, R12, R13", "R8 R9 R10 R12 R13")]
    [InlineData("R09–R11", "R09 R10 R11")]
    [InlineData("R1, R02, R03", "R1 R02 R03")]
    [InlineData("A1, B2, B3", "A1 B2 B3")]
    [InlineData("door, rain", "door rain")]
    [InlineData("R03, R02, R01", "R03 R02 R01")]
    public void Rolls_that_are_numbered_on_are_written_as_the_first_and_the_last(string written, string rolls) =>
        Assert.Equal(written, RollRuns.Of(rolls.Split(' ')));
}
