using System.Text.Json;
using Spoolbook.Acceptance.Folders;

namespace Spoolbook.Acceptance;

/// <summary>The production in the documentation: no errors, and only warnings that are right.</summary>
public class SampleProduction
{
    [Fact]
    public void The_sample_has_no_error_and_its_findings_are_what_really_went_wrong_on_the_shoot()
    {
        var run = InProcess.Run(Repository.Sample, "check", ".", "--format", "json");

        using var read = JsonDocument.Parse(run.Said);
        var told = read
            .RootElement.GetProperty("findings")
            .EnumerateArray()
            .Select(f =>
                $"{f.GetProperty("check").GetString()} {(f.TryGetProperty("take", out var take) ? take.GetString() : "")}".TrimEnd()
            );
        Assert.Equal(0, run.Status);
        Assert.Equal(["kit/not-returned", "cover/shot-without-good-take", "speed/spring-overrun 2A/4", "cover/shot-not-listed 2C/1"], told);
    }

    [Fact]
    public void The_spring_that_ran_down_on_purpose_is_accepted_with_its_reason()
    {
        var run = InProcess.Run(Repository.Sample, "check", ".", "--format", "json");

        using var read = JsonDocument.Parse(run.Said);
        var waived = Assert.Single(read.RootElement.GetProperty("waived").EnumerateArray());
        Assert.Equal("7B/3", waived.GetProperty("take").GetString());
        Assert.StartsWith("The spring is meant to run down", waived.GetProperty("reason").GetString(), StringComparison.Ordinal);
    }
}
