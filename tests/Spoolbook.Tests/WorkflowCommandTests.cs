namespace Spoolbook.Tests;

/// <summary>Findings as workflow commands of a code host: <c>::error file=…,line=…,col=…::message</c>.</summary>
public sealed class WorkflowCommandTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void Each_finding_is_a_line_with_its_place_seen_from_the_folder_of_the_command()
    {
        _bench.CopyOf(Repository.Sample, "ferry");

        var (status, said, _) = _bench.Run("check", "ferry", "--format", "github");

        var lines = said.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(0, status);
        Assert.Equal(4, lines.Length);
        Assert.All(lines, line => Assert.StartsWith("::warning file=ferry/", line, StringComparison.Ordinal));
        Assert.Contains(",line=12,col=44,endColumn=49,title=speed/spring-overrun::19+35 on one wind", said, StringComparison.Ordinal);
    }

    [Fact]
    public void What_would_end_a_property_or_the_line_is_written_as_its_code()
    {
        var production = _bench.CopyOf(Repository.Sample, "a,b%");
        var roll = Path.Combine(production, "rolls", "r01.yaml");
        File.WriteAllText(roll, File.ReadAllText(roll).Replace("lot: N250-A", "lot: 'N%0A::error::x'", StringComparison.Ordinal));

        var (_, said, _) = _bench.Run("check", "a,b%", "--format", "github");

        Assert.Contains("::error file=a%2Cb%25/rolls/r01.yaml,", said, StringComparison.Ordinal);
        Assert.Contains("N%250A::error::x", said, StringComparison.Ordinal);
        Assert.All(said.Split('\n', StringSplitOptions.RemoveEmptyEntries), l => Assert.StartsWith("::", l, StringComparison.Ordinal));
    }
}
