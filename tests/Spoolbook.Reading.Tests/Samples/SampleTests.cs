using Spoolbook.Reading.Files;
using Xunit.Abstractions;

namespace Spoolbook.Reading.Tests.Samples;

public sealed class SampleTests(ITestOutputHelper output)
{
    [Fact]
    public void The_sample_production_reads_without_a_finding()
    {
        var result = ProductionReader.Read(new FolderFiles(Repository.Sample));
        foreach (var f in result.Findings)
        {
            output.WriteLine($"{f.Place} {f.Check} {f.Message} | {f.Help}");
        }

        Assert.Empty(result.Findings);
        Assert.Equal("HERON", result.Production!.Code.Value);
        Assert.Equal(7, result.Production.Rolls.Length);
    }
}
