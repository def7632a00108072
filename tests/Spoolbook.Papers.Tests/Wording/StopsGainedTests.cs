using Spoolbook.Papers.Wording;

namespace Spoolbook.Papers.Tests.Wording;

public class StopsGainedTests
{
    // 32 frames a second against 24, and a shutter a quarter closed, are both 3/4 of the light: half a stop, as the mark on the
    // shutter counts (common practice). A filter is marked in thirds.
    [Theory]
    [InlineData(-0.41504, "\u22121/2")]
    [InlineData(-0.5, "\u22121/2")]
    [InlineData(-1.41504, "\u22121 1/2")]
    [InlineData(0.58496, "+1/2")]
    [InlineData(-0.66667, "\u22122/3")]
    [InlineData(-0.33333, "\u22121/3")]
    [InlineData(0.26303, "+1/3")]
    [InlineData(1, "+1")]
    [InlineData(0.05, "0")]
    public void The_same_light_is_the_same_figure_wherever_it_is_printed(double stops, string printed) =>
        Assert.Equal(printed, PaperFormat.StopsGained(stops));
}
