using Spoolbook.Papers.Wording;

namespace Spoolbook.Papers.Tests.Wording;

/// <summary>A producer reads what to do; what to write in the file comes last.</summary>
public class AdviceTests
{
    [Theory]
    [InlineData(
        "Wind the spring before the next take. If it was wound, write `- wind: {}` before it.",
        "Wind the spring before the next take.",
        "If it was wound, write `- wind: {}` before it."
    )]
    [InlineData(
        "If it was intentional, write it on the take: `exposed: -1`. If not, tell the lab.",
        "Tell the lab.",
        "If it was intentional, write it on the take: `exposed: -1`."
    )]
    [InlineData("Write `lot: D250`.", "", "Write `lot: D250`.")]
    [InlineData(
        "Reshoot before the set is struck, or mark the take as `hold`.",
        "Reshoot before the set is struck, or mark the take as `hold`.",
        ""
    )]
    [InlineData("Measure the tail of 2.5 ft. Then call the lab.", "Measure the tail of 2.5 ft. Then call the lab.", "")]
    [InlineData("", "", "")]
    public void What_to_do_is_apart_from_the_line_to_write(string help, string toDo, string inFile) =>
        Assert.Equal((toDo, inFile), (Advice.Of(help).ToDo, Advice.Of(help).InFile));
}
